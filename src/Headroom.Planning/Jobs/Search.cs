using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Asks for the cheapest set again and again: each is packed exactly and studied, and what fails is barred for good.</summary>
internal sealed class Search
{
    // Other cords in the same boxes are tried so often before the boxes are given up.
    private const int MostFillings = 3;

    private readonly JobPacking _packing;
    private readonly Gate _gate;
    private readonly PlanRequest _request;
    private readonly RelaxedModel _relaxed;

    /// <summary>Begins.</summary>
    public Search(JobPacking packing, Gate gate, PlanRequest request, int? boxes = null)
    {
        (_packing, _gate, _request) = (packing, gate, request);
        _relaxed = new RelaxedModel(packing.Problem, MostBoxes(packing.Problem));
        if (boxes is { } most)
            _relaxed.Boxes(1, most);
    }

    /// <summary>What the study has nothing against, in the order found.</summary>
    public List<Candidate> Found { get; } = [];

    /// <summary>What lost, in the order found.</summary>
    public List<RefusedSet> Refused { get; } = [];

    /// <summary>No design that was not found costs less, in coins; null when all were found.</summary>
    public long? Bound { get; private set; } = 0;

    /// <summary>True when boxes were given up though other cords in them might do: the bound then leaves them out.</summary>
    public bool GaveUp { get; private set; }

    /// <summary>Looks on until no set costs less than a limit, or enough were found or tried.</summary>
    /// <param name="limit">Says, by the cheapest found, up to which cost to look [coins].</param>
    /// <param name="most">The most designs to find.</param>
    /// <param name="tries">The most sets to try.</param>
    public void Run(Func<long, long> limit, int most, int tries)
    {
        for (var i = 0; i < tries && Found.Count < most && !_request.Effort.Stop.IsCancellationRequested; i++)
        {
            var (set, bound) = _relaxed.Solve(_request.Effort);
            Bound = bound;
            var cheapest = Found.Count > 0 ? Found.Min(found => UnitPrices.Coins(found.Cost)) : (long?)null;
            _request.Effort.Told?.Invoke(cheapest ?? 0, bound ?? cheapest ?? 0);
            if (set is null || (cheapest is { } cost && bound >= limit(cost)))
                return;
            Try(set);
        }
    }

    private static int MostBoxes(PackProblem problem) => Math.Max(1, Math.Min(60, problem.Kinds.Sum(kind => kind.Count)));

    private void Try(BoughtSet set)
    {
        var barred = new List<IReadOnlyList<PackedBox>>();
        while (true)
        {
            var packed = ExactPacking.Of(_packing.Problem, _relaxed.Table, set, barred, _request.Effort);
            if (packed.Cost is null)
            {
                Give(set, barred.Count, packed.Impossible);
                return;
            }

            if (Accept(set, packed) is not { } broken)
            {
                _relaxed.BarHolding(set);
                return;
            }

            barred.Add(packed.Boxes);
            if (barred.Count < MostFillings && broken.Discipline is "power" or "traffic" or "failure" && set.Count > 1)
                continue;
            GaveUp |= set.Count > 1 && broken.Discipline is "power" or "traffic" or "failure";
            _relaxed.BarExactly(set);
            return;
        }
    }

    // Nothing goes into these boxes, and so not into fewer of them either.
    private void Give(BoughtSet set, int tried, bool proved)
    {
        if (tried > 0 || !proved)
        {
            GaveUp |= !proved;
            _relaxed.BarExactly(set);
            return;
        }

        Refused.Add(new("does not fit", Words(set), null, null, new FitReason(_packing, _relaxed.Table, _gate, _request).Of(set)));
        _relaxed.BarWithin(set);
    }

    private LedgerEntry? Accept(BoughtSet set, Packed packed)
    {
        var design = DesignMaker.Make(_packing, packed, set, "proposed");
        var ledger = _gate.Study(design);
        var cost = DesignCost.Of(design, _packing.Catalogue, _packing.Prices, _request.Pins.Owned)!;
        var bought = DesignCost.Bought(design, _packing.Catalogue);
        if (_gate.NotKept(ledger) is not [var worst, ..])
        {
            Found.Add(new(set, packed, design, ledger, cost, bought));
            return null;
        }

        Refused.Add(new("refused", bought, cost.Total, worst.Id, PlanWords.Of(worst)));
        return worst;
    }

    private string Words(BoughtSet set) => PlanWords.Counted(
        set.Boxes.OrderBy(at => at.Key).SelectMany(at => Enumerable.Repeat(_relaxed.Table.Boxes[at.Key.Family].Family, at.Value))
            .Concat(set.Extras.Select(extra => _packing.Problem.Extras[extra].Id)));
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Failure;
using Headroom.Engineering.Power;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Asks for the cheapest set again and again: each is packed exactly and studied, and what fails is barred for good.</summary>
internal sealed class Search : Looking
{
    // Other cords in the same boxes are tried so often before the boxes are given up.
    private const int MostFillings = 15;

    private readonly JobPacking _packing;
    private readonly Gate _gate;
    private readonly PlanRequest _request;
    private readonly PackProblem _problem;
    private readonly RelaxedModel _relaxed;
    private readonly List<PackedBox> _tooMuch = [];
    private readonly int? _place;
    private readonly Job _job;

    /// <summary>Begins.</summary>
    /// <param name="packing">The job as a packing.</param>
    /// <param name="gate">Has designs studied.</param>
    /// <param name="request">What is asked for.</param>
    /// <param name="boxes">The most switches; null for any number.</param>
    /// <param name="place">The only place that is looked at; null for all.</param>
    public Search(JobPacking packing, Gate gate, PlanRequest request, int? boxes = null, int? place = null)
    {
        (_packing, _gate, _request, _place) = (packing, gate, request, place);
        _problem = place is { } at ? PlaceSplit.ProblemOf(packing, at) : packing.Problem;
        _job = place is { } here ? PlaceSplit.JobOf(packing, here) : packing.Job;
        _relaxed = new RelaxedModel(_problem, MostBoxes(_problem));
        if (boxes is { } most)
            _relaxed.Boxes(1, most);
        foreach (var kept in packing.Kept.Where(kept => place is null || kept.Place == place).GroupBy(kept => kept))
            _relaxed.Keep(kept.Key.Place, kept.Key.Family, kept.Count());
    }

    /// <inheritdoc/>
    public override void Run(Func<long, long> limit, int most, int tries)
    {
        for (var i = 0; i < tries && Found.Count < most && !_request.Effort.Stop.IsCancellationRequested; i++)
        {
            var (set, bound) = _relaxed.Solve(_request.Effort with { Work = _request.Effort.Work / 4 });
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
        for (var filling = 0; ; filling++)
        {
            var packed = ExactPacking.Of(_problem, _relaxed.Table, set, barred, _tooMuch, _request.Effort);
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

            if (set.Count == 1 || filling >= MostFillings || !Learn(broken, packed, barred))
            {
                GaveUp |= set.Count > 1 && filling >= MostFillings;
                _relaxed.BarExactly(set);
                return;
            }
        }
    }

    // What is too much for one box stays too much for it in every other set; what hangs on how all is shared out is barred as it is.
    private bool Learn(LedgerEntry broken, Packed packed, List<IReadOnlyList<PackedBox>> barred)
    {
        var number = Enumerable.Range(0, packed.Boxes.Count).FirstOrDefault(i => broken.Subject == $"switch-{i + 1}", -1);
        if (number >= 0 && broken.Discipline is PowerLedger.Discipline or StandbyLedger.Discipline && packed.Boxes[number].Items.Count > 0)
            _tooMuch.Add(packed.Boxes[number]);
        else if (broken.Discipline is PowerLedger.Discipline or TrafficLedger.Discipline or FailureLedger.Discipline)
            barred.Add(packed.Boxes);
        else
            return false;
        return true;
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

        Refused.Add(new("does not fit", Words(set), Bound / 100m, null, new FitReason(_packing, (_problem, _job), _relaxed.Table, _gate, _request).Of(set, Global(set))));
        _relaxed.BarWithin(set);
    }

    private LedgerEntry? Accept(BoughtSet set, Packed packed)
    {
        var design = DesignMaker.Make(_packing, packed, Global(set), "proposed");
        var ledger = _gate.Study(design, _job);
        var cost = DesignCost.Of(design, _packing.Catalogue, _packing.Prices, _request.Pins.Owned)!;
        var bought = DesignCost.Bought(design, _packing.Catalogue);
        if (_gate.NotKept(ledger).Find(entry => _place is null || IsLocal(entry, design)) is not { } worst)
        {
            Found.Add(new(Global(set), packed, design, ledger, cost, bought));
            return null;
        }

        Refused.Add(new("refused", bought, cost.Total, worst.Id, PlanWords.Of(worst)));
        return worst;
    }

    private string Words(BoughtSet set) => PlanWords.Counted(
        set.Boxes.OrderBy(at => at.Key).SelectMany(at => Enumerable.Repeat(_relaxed.Table.Boxes[at.Key.Family].Family, at.Value))
            .Concat(set.Extras.Select(extra => _problem.Extras[extra].Id)));

    // What is kept by units and racks of one place; the rest hangs on other places too, and is seen when all stand together.
    private bool IsLocal(LedgerEntry entry, Design design) =>
        design.Switches.Any(unit => unit.Id == entry.Subject) || design.Injectors.Any(unit => unit.Id == entry.Subject) || design.Standby.Any(unit => unit.Id == entry.Subject)
        || _packing.Job.Survey.Racks.Any(rack => rack.Id == entry.Subject && rack.In == _packing.Places[_place!.Value]) || entry.Discipline == PowerLedger.Discipline;

    // The extras of one place have other numbers among all.
    private BoughtSet Global(BoughtSet set) => _place is not { } place ? set : set with
    {
        Extras = [.. set.Extras.Select(extra => Enumerable.Range(0, _packing.Problem.Extras.Count).Where(i => _packing.Problem.Extras[i].Place == place).ElementAt(extra))],
    };
}

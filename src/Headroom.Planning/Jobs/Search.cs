using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Failure;
using Headroom.Engineering.Power;
using Headroom.Engineering.Racking;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Asks for the cheapest set again and again: each is packed exactly and studied, and what fails is barred for good.</summary>
internal sealed class Search : Looking
{
    // Other cords in the same boxes are tried so often before the boxes are given up.
    private const int MostFillings = 15;

    // A reason in full is worked out for so many; it takes a packing and a study of its own.
    private const int MostReasons = 8;

    private readonly JobPacking _packing;
    private readonly Gate _gate;
    private readonly PlanRequest _request;
    private readonly PackProblem _problem;
    private readonly ISetSource _sets;
    private readonly List<PackedBox> _tooMuch = [];
    private readonly PriorityQueue<Filling, (long Cost, int Number)> _packed = new();
    private readonly int? _place;
    private readonly long _perBox;
    private readonly Job _job;
    private (BoughtSet? Set, long? Bound)? _ahead;
    private int _number;

    /// <summary>Begins.</summary>
    /// <param name="packing">The job as a packing.</param>
    /// <param name="gate">Has designs studied.</param>
    /// <param name="request">What is asked for.</param>
    /// <param name="boxes">The most switches; null for any number.</param>
    /// <param name="place">The only place that is looked at; null for all.</param>
    /// <param name="perBox">What a switch costs beyond its price, to have few of them [coins]; bounds then count it too.</param>
    public Search(JobPacking packing, Gate gate, PlanRequest request, int? boxes = null, int? place = null, long perBox = 0)
    {
        (_packing, _gate, _request, _place, _perBox) = (packing, gate, request, place, perBox);
        _problem = place is { } at ? PlaceSplit.ProblemOf(packing, at) : packing.Problem;
        _job = place is { } here ? PlaceSplit.JobOf(packing, here) : packing.Job;
        var kept = packing.Kept.Where(kept => place is null || kept.Place == place).ToList();
        _sets = SetStream.PlaceOf(_problem) is { } only && kept.TrueForAll(one => one.Place == only)
            ? new SetStream(_problem, only, boxes ?? MostBoxes(_problem), [.. kept.Select(one => one.Family)], perBox)
            : Relaxed(_problem, kept, boxes, perBox);
    }

    /// <summary>Told how far it is; null for whoever the request names.</summary>
    public Action<long, long>? Told { get; set; }

    /// <inheritdoc/>
    public override void Run(Func<long, long> limit, int most, int tries)
    {
        for (var i = 0; i < tries && Found.Count < most && TooSlow is null; i++)
        {
            if (_request.Effort.Stop.IsCancellationRequested && (Found.Count > 0 || _packed.Count == 0))
                return;
            var (set, ahead) = _ahead ??= _sets.Next(_request.Effort with { Work = _request.Effort.Work / 4 });
            var waits = _packed.TryPeek(out _, out var least) ? least.Cost : (long?)null;
            Bound = ahead is { } some ? Math.Min(some, waits ?? some) : waits;
            var cheapest = Found.Count > 0 ? Found.Min(found => UnitPrices.Coins(found.Cost)) : (long?)null;
            (Told ?? _request.Effort.Told)?.Invoke(cheapest ?? Known ?? 0, Bound ?? cheapest ?? 0);
            if (Bound is null && Found.Count == 0 && Refused.Count == 0)
                Tell();
            if (Bound is null || Bound >= Below || (cheapest is { } cost && Bound >= limit(cost)))
                return;
            if (waits is not null && (set is null || waits <= ahead || _request.Effort.Stop.IsCancellationRequested))
                Judge(_packed.Dequeue());
            else if (set is null)
                return;
            else
            {
                _ahead = null;
                Pack(new(set, [], Packed.Nothing), inFull: false);
            }
        }
    }

    private static RelaxedModel Relaxed(PackProblem problem, List<(int Place, string Family)> kept, int? boxes, long perBox)
    {
        var relaxed = new RelaxedModel(problem, MostBoxes(problem), perBox);
        if (boxes is { } most)
            relaxed.Boxes(1, most);
        foreach (var one in kept.GroupBy(one => one))
            relaxed.Keep(one.Key.Place, one.Key.Family, one.Count());
        return relaxed;
    }

    private static int MostBoxes(PackProblem problem) => Math.Max(1, Math.Min(60, problem.Kinds.Sum(kind => kind.Count)));

    // What it costs packed says when its turn comes; what is dearer than another that waits is packed in full only then.
    private void Pack(Filling filling, bool inFull)
    {
        var set = filling.Set;
        var most = !inFull && _packed.TryPeek(out _, out var least) && least.Cost - 1 - _perBox * set.Count is > 0 and var dearest ? dearest : (long?)null;
        var packed = ExactPacking.Of(_problem, _sets.Table, set, filling.Barred, _tooMuch, _request.Effort, most);
        if (packed.Cost is { } cost)
            _packed.Enqueue(filling with { Packed = packed }, (cost + _perBox * set.Count, _number++));
        else if (most is { } dear && packed.Impossible)
            _packed.Enqueue(filling with { Packed = Packed.Nothing }, (dear + 1 + _perBox * set.Count, _number++));
        else
            Give(set, filling.Barred.Count, packed.Impossible);
    }

    private void Judge(Filling filling)
    {
        var (set, barred, packed) = filling;
        if (packed.Cost is null)
            Pack(filling, inFull: true);
        else if (Accept(set, packed) is not { } broken)
        {
            _sets.BarHolding(set);
        }
        else if (barred.Count + filling.TooMuch < MostFillings && Learn(broken, packed, barred) is { } learned)
        {
            Pack(filling with { TooMuch = filling.TooMuch + learned }, inFull: false);
        }
        else
        {
            GaveUp |= barred.Count + filling.TooMuch >= MostFillings;
            if (OnlyGrows(broken))
                _sets.BarHolding(set);
            else
                _sets.BarExactly(set);
        }
    }

    // What is too much for one box stays too much for it in every other set; what hangs on how all is shared out is barred as it is.
    private int? Learn(LedgerEntry broken, Packed packed, List<IReadOnlyList<PackedBox>> barred)
    {
        var number = Enumerable.Range(0, packed.Boxes.Count).FirstOrDefault(i => broken.Subject == $"switch-{i + 1}", -1);
        if (number >= 0 && broken.Discipline is PowerLedger.Discipline or StandbyLedger.Discipline && packed.Boxes[number].Items.Count > 0)
        {
            _tooMuch.Add(packed.Boxes[number]);
            return 1;
        }

        if (broken.Discipline is PowerLedger.Discipline or TrafficLedger.Discipline or FailureLedger.Discipline)
        {
            barred.Add(packed.Boxes);
            return 0;
        }

        return null;
    }

    // Nothing came up at all: the sets that came nearest say why.
    private void Tell()
    {
        if (_sets is not SetStream stream)
            return;
        foreach (var set in stream.TooLittle)
            Refused.Add(new("does not fit", Words(set), null, null, new FitReason(_packing, (_problem, _job), _sets.Table, _gate, _request).Of(set, Global(set))));
        if (stream.TooLittle.Count == 0)
            Refused.Add(new("does not fit", "any number of what may be used", null, null, "none of it has ports of all the kinds that are needed, links included"));
    }

    // What more boxes only make worse: room and weight in the rack, the budget, what is heard.
    private static bool OnlyGrows(LedgerEntry entry) => entry.Discipline is RackingLedger.Discipline or AcousticLedger.Discipline || entry.Quantity == "budget";

    // Nothing goes into these boxes, and so not into fewer of them either.
    private void Give(BoughtSet set, int tried, bool proved)
    {
        if (tried > 0 || !proved)
        {
            GaveUp |= !proved;
            _sets.BarExactly(set);
            return;
        }

        Refused.Add(new("does not fit", Words(set), Bound / 100m, null, Refused.Count(refused => refused.Why == "does not fit") < MostReasons ? new FitReason(_packing, (_problem, _job), _sets.Table, _gate, _request).Of(set, Global(set)) : "not all goes in with its links and limits kept"));
        _sets.BarWithin(set);
    }

    private LedgerEntry? Accept(BoughtSet set, Packed packed)
    {
        var design = DesignMaker.Make(_packing, packed, Global(set), "proposed");
        var ledger = _gate.Study(design, _job);
        var cost = DesignCost.Of(design, _packing.Catalogue, _packing.Prices, _request.Pins.Owned)!;
        var bought = DesignCost.Bought(design, _packing.Catalogue);
        var broken = _gate.NotKept(ledger);
        TooSlow ??= broken.Select(entry => LinkRates.TooSlow(entry, _packing, packed)).FirstOrDefault(slow => slow is not null);
        if (broken.Find(entry => _place is null || IsLocal(entry, design)) is not { } worst)
        {
            Found.Add(new(Global(set), packed, design, ledger, cost, bought));
            return null;
        }

        Refused.Add(new("refused", bought, cost.Total, worst.Id, PlanWords.Of(worst)));
        return worst;
    }

    private string Words(BoughtSet set) => PlanWords.Counted(
        set.Boxes.OrderBy(at => at.Key).SelectMany(at => Enumerable.Repeat(_sets.Table.Boxes[at.Key.Family].Family, at.Value))
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

    // A set as it is packed, with the fillings of it that were refused before.
    private sealed record Filling(BoughtSet Set, List<IReadOnlyList<PackedBox>> Barred, Packed Packed)
    {
        public int TooMuch { get; init; }
    }
}

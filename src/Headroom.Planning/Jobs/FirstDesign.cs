using Headroom.Domain.Ledgers;
using Headroom.Engineering.Standby;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>A design at once, for whoever looks on or stops the search early: filled box by box in each place, and shown only when the study has nothing against it.</summary>
internal sealed class FirstDesign
{
    // So few that nobody waits for them, even who has stopped the search already.
    private const int MostStudied = 24;

    // Faster links are taken so often before it is left to the search.
    private const int MostFaster = 3;

    private readonly JobPacking _packing;
    private readonly Gate _gate;
    private readonly PlanRequest _request;
    private readonly List<int> _places;
    private readonly PackProblem _problem;
    private readonly List<List<QuickSet>> _sets;
    private readonly List<string> _keys;
    private readonly FamilyTable _table;

    private FirstDesign(JobPacking packing, Gate gate, PlanRequest request)
    {
        (_packing, _gate, _request) = (packing, gate, request);
        _problem = OnePlaceEach(packing);
        _places = [.. Enumerable.Range(0, packing.Places.Count).Where(place => packing.Line.Links[place].Must || _problem.Kinds.Any(kind => kind.Count > 0 && kind.Places.Contains(place)))];
        _sets = [.. _places.Select(place => QuickSets.Of(_problem, place, [.. packing.Kept.Where(kept => kept.Place == place).Select(kept => kept.Family)]))];
        _keys = [.. _places.Select(place => PlaceSplit.KeyOf(packing, place))];
        _table = new FamilyTable(packing.Problem);
    }

    /// <summary>Looks for one; null when none comes up at once, which says nothing of whether there is one.</summary>
    public static Candidate? Of(JobPacking packing, Gate gate, PlanRequest request)
    {
        var rates = LinkRates.Any;
        for (var faster = 0; faster <= MostFaster; faster++)
        {
            var first = new FirstDesign(packing, gate, request);
            if (first._places.Count == 0 || packing.Kept.Exists(kept => !first._places.Contains(kept.Place)))
                return null;
            var found = first.Find(out var slow);
            if (slow is null)
                return found;
            packing = packing.With(rates = rates.With(slow.Value));
        }

        return null;
    }

    // What can be reached from several places goes where the line comes in, else to the first of them.
    private static PackProblem OnePlaceEach(JobPacking packing) => packing.Problem with
    {
        Kinds = [.. packing.Problem.Kinds.Select(kind => kind with { Places = kind.Places.Contains(packing.Line.Root) ? [packing.Line.Root] : [.. kind.Places.Take(1)] })],
    };

    private Candidate? Find(out (int Place, LinkKind Kind, double Bits)? slow)
    {
        slow = null;
        var at = new int[_places.Count];
        for (var i = 0; i < MostStudied; i++)
        {
            if (Enumerable.Range(0, at.Length).Any(number => at[number] >= _sets[number].Count))
                return null;
            var sets = at.Select((set, number) => _sets[number][set]).ToList();
            if (Study(sets, out var broken, out var boxes) is { } found)
                return found;
            slow = broken.Select(entry => LinkRates.TooSlow(entry, _packing, new(null, null, boxes))).FirstOrDefault(one => one is not null);
            if (slow is not null)
                return null;
            Next(at, broken[0], boxes);
        }

        return null;
    }

    private Candidate? Study(List<QuickSet> sets, out List<LedgerEntry> broken, out List<PackedBox> boxes)
    {
        boxes = [.. sets.SelectMany(set => set.Boxes)];
        var bought = new BoughtSet(
            boxes.GroupBy(box => (box.Place, _table.Families.FindIndex(family => family.Contains(box.Box)))).ToDictionary(group => group.Key, group => group.Count()),
            [.. sets.Select(set => set.Extra).OfType<int>()]);
        var packed = new Packed(sets.Sum(set => set.Cost), 0, boxes);
        var design = DesignMaker.Make(_packing, packed, bought, "proposed");
        var ledger = _gate.Glance(design);
        broken = _gate.NotKept(ledger);
        return broken.Count > 0 ? null
            : new(bought, packed, design, ledger, DesignCost.Of(design, _packing.Catalogue, _packing.Prices, _request.Pins.Owned)!, DesignCost.Bought(design, _packing.Catalogue));
    }

    // Where the study names a switch its place takes the next set, and all that come to the same with it; otherwise every place does.
    private void Next(int[] at, LedgerEntry broken, List<PackedBox> boxes)
    {
        var number = Enumerable.Range(0, boxes.Count).FirstOrDefault(i => broken.Subject == $"switch-{i + 1}", -1);
        var key = number < 0 ? null : _keys[_places.IndexOf(boxes[number].Place)];
        for (var place = 0; place < at.Length; place++)
        {
            if (key is not null && _keys[place] != key)
                continue;
            var was = _sets[place][at[place]];
            do
                at[place]++;
            while (broken.Discipline == StandbyLedger.Discipline && at[place] < _sets[place].Count && Holds(_sets[place][at[place]]) <= Holds(was));
        }
    }

    private long Holds(QuickSet set) => set.Extra is { } extra ? _problem.Extras[extra].Holds : long.MaxValue;
}

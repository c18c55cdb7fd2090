namespace Headroom.Planning.Packing;

/// <summary>
/// The sets of boxes of one place in the order of what they cost at the least: box is added to box, and what cannot become whole below the bound of another
/// waits. Rows say what a part of a set costs at the least once it is whole; each set that comes up is looked at by a linear programme first, and where that
/// says more than the rows did, it becomes a row for all others.
/// </summary>
internal sealed class SetStream : ISetSource
{
    // So many parts of sets are opened for each unit of work.
    private const double PartsPerWork = 20_000;

    // So many of the sets that do not do are told.
    private const int MostTold = 3;

    // Rows beyond these cost more time than they save.
    private const int MostRows = 60;

    private readonly PackProblem _problem;
    private readonly int _place;
    private readonly FillRows _fills;
    private readonly SetLeast _least;
    private readonly List<int> _order;
    private readonly int[] _most;
    private readonly int _mostBoxes;
    private readonly PriorityQueue<Part, (long Cost, int Number)> _open = new();
    private readonly List<BoughtSet> _within = [];
    private readonly List<BoughtSet> _holding = [];
    private readonly HashSet<string> _exactly = [];
    private readonly long _perBox;
    private int _number;
    private int _rows;

    /// <summary>Begins.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="place">The only place in it that is used.</param>
    /// <param name="mostBoxes">The most boxes of a set.</param>
    /// <param name="kept">Families of which boxes stay, each as often as there are such.</param>
    /// <param name="perBox">What a box costs beyond its price, to have few of them.</param>
    public SetStream(PackProblem problem, int place, int mostBoxes, IReadOnlyList<string> kept, long perBox = 0)
    {
        (_problem, _place, _mostBoxes, _perBox) = (problem, place, mostBoxes, perBox);
        Table = new FamilyTable(problem);
        _most = [.. Table.Boxes.Select(box => box.Places?.Contains(place) == false ? 0 : Math.Min(mostBoxes, box.Most ?? mostBoxes))];
        _fills = new FillRows(problem, Table, _most);
        var costs = Table.Boxes.Select(box => (double)(box.Cost + perBox)).ToArray();
        var root = _fills.Root(costs);
        // What costs least beyond what it is worth comes first.
        _order = [.. Enumerable.Range(0, _most.Length).Where(family => _most[family] > 0).OrderBy(family => root is null ? costs[family] : costs[family] - root.Lacking * root.OfFamily[family]).ThenBy(family => family)];
        _least = new SetLeast(problem, Table, place, _order, perBox);
        if (root is not null)
            _least.Add(root);
        foreach (var row in SetRows.Of(problem, Table, place))
            _least.Add(row);
        var first = kept.Select(name => Table.Boxes.FindIndex(box => box.Family == name)).ToArray();
        if (!first.Contains(-1))
            Open(new Part(first, 0), long.MinValue);
    }

    /// <inheritdoc/>
    public FamilyTable Table { get; }

    /// <summary>The first few sets into which not all goes even in parts, the cheapest first.</summary>
    public List<BoughtSet> TooLittle { get; } = [];

    /// <summary>The only place of a problem that is used; null where there are several.</summary>
    public static int? PlaceOf(PackProblem problem)
    {
        var used = Enumerable.Range(0, problem.Places).Where(place => (problem.Linked && problem.Links[place].Must) || problem.Kinds.Any(kind => kind.Count > 0 && kind.Places.Contains(place))).ToList();
        return used is [var only] && problem.Extras.All(extra => extra.Place == only) ? only : null;
    }

    /// <inheritdoc/>
    public (BoughtSet? Set, long? Bound) Next(PackEffort effort)
    {
        for (var left = effort.Work * PartsPerWork; _open.TryPeek(out var part, out var key); left--)
        {
            if (left <= 0 || effort.Stop.IsCancellationRequested)
                return (null, Math.Max(0, key.Cost));
            _open.Dequeue();
            if (IsBarred(part))
                continue;
            if (part.Extra is null)
                Grow(part, key.Cost);
            else if (Sure(part, key.Cost) is { } set)
                return (set, key.Cost);
        }

        return (null, null);
    }

    /// <inheritdoc/>
    public void BarWithin(BoughtSet set) => _within.Add(set);

    /// <inheritdoc/>
    public void BarHolding(BoughtSet set) => _holding.Add(set);

    /// <inheritdoc/>
    public void BarExactly(BoughtSet set) => _exactly.Add(set.Key);

    private void Open(Part part, long cost) => _open.Enqueue(part, (cost, _number++));

    // Rows that came since may say more of it. A box is only added if none that comes later in the order was added before.
    private void Grow(Part part, long cost)
    {
        if (_least.Open(part.Families, part.From) is not { } now)
            return;
        if (now > cost && cost != long.MinValue)
        {
            Open(part, now);
            return;
        }

        Whole(part, null, 0);
        for (var at = part.From; at < _order.Count && part.Families.Length < _mostBoxes; at++)
        {
            var family = _order[at];
            if (part.Families.Count(other => other == family) >= _most[family])
                continue;
            var more = new Part([.. part.Families, family], at);
            if (!IsTooLoud(more) && _least.Open(more.Families, at) is { } bound)
                Open(more, Math.Max(cost, bound));
        }
    }

    // The linear programme of the set itself; a set that it finds dearer waits until that is the least.
    private BoughtSet? Sure(Part part, long cost)
    {
        if (part.Between is not null)
        {
            // The same boxes come again with the next dearer extra.
            Whole(part, Plugs(part) is null ? part.Between : null, part.Extra!.Value + 1);
            return SetOf(part);
        }

        if (_least.Whole(part.Families) is not { } now)
            return null;
        if (now + ExtraCost(part) > cost)
        {
            Open(part, now + ExtraCost(part));
            return null;
        }

        var (between, row) = _fills.Of(part.Families, Plugs(part));
        if (row is not null && _rows++ < MostRows && (double.IsPositiveInfinity(between) || _least.WithBetween(part.Families, between) > now))
            _least.Add(row);
        if (double.IsPositiveInfinity(between) && TooLittle.Count < MostTold)
            TooLittle.Add(SetOf(part));
        if (double.IsPositiveInfinity(between) && Plugs(part) is { } few)
            Whole(part, null, part.Extra!.Value + 1, few);
        else if (!double.IsPositiveInfinity(between))
            Open(part with { Between = between }, Math.Max(cost, _least.WithBetween(part.Families, between) + ExtraCost(part)));
        return null;
    }

    // Where the plugs of one extra do not do, one with more of them may.
    private void Whole(Part part, double? between, int extra, int? morePlugs = null)
    {
        var cost = between is { } known ? _least.WithBetween(part.Families, known) : _least.Whole(part.Families);
        if (cost is null)
            return;
        while (extra < _least.ByCost.Count && (!_least.Holds(_least.ByCost[extra], part.Families) || _problem.Extras[_least.ByCost[extra]].Plugs <= morePlugs))
            extra++;
        if (extra >= Math.Max(1, _least.ByCost.Count))
            return;
        var whole = part with { Extra = extra, Between = between };
        Open(whole, cost.Value + ExtraCost(whole));
    }

    private int? Plugs(Part part) => _least.ByCost.Count > 0 ? _problem.Extras[_least.ByCost[part.Extra!.Value]].Plugs : null;

    private long ExtraCost(Part part) => _least.ByCost.Count > 0 ? _problem.Extras[_least.ByCost[part.Extra!.Value]].Cost : 0;

    // Powers add, so that what is too loud stays so with more beside it.
    private bool IsTooLoud(Part part)
    {
        for (var ear = 0; ear < _problem.Bears.Count; ear++)
        {
            if (part.Families.Sum(family => Table.Boxes[family].Heard[_place][ear]) > _problem.Bears[ear] * (1 + 1e-9))
                return true;
        }

        return false;
    }

    private bool IsBarred(Part part)
    {
        var counts = part.Families.GroupBy(family => family).ToDictionary(group => group.Key, group => group.Count());
        if (_holding.Exists(set => set.Boxes.All(at => counts.GetValueOrDefault(at.Key.Family) >= at.Value)))
            return true;
        return part.Extra is not null
            && (_within.Exists(set => counts.All(at => set.Boxes.GetValueOrDefault((_place, at.Key)) >= at.Value)) || _exactly.Contains(SetOf(part).Key));
    }

    private BoughtSet SetOf(Part part) => new(
        part.Families.GroupBy(family => family).ToDictionary(group => (_place, group.Key), group => group.Count()),
        _least.ByCost.Count > 0 ? [_least.ByCost[part.Extra!.Value]] : []);

    // A part of a set; all of it once it has one of the extras, in the order of their cost, or stands without any.
    private sealed record Part(int[] Families, int From)
    {
        public int? Extra { get; init; }

        public double? Between { get; init; }
    }
}

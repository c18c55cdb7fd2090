namespace Headroom.Planning.Packing;

/// <summary>Fills boxes of one place one after the other: links first, then what fewest boxes can serve and what weighs most. Quick, and never less than what it says.</summary>
internal sealed class QuickFill
{
    private readonly PackProblem _problem;
    private readonly int _place;
    private readonly List<int> _kinds;
    private readonly List<int>[][] _ways;
    private readonly int[][] _uses;

    /// <summary>Reads one place of a problem.</summary>
    public QuickFill(PackProblem problem, int place)
    {
        (_problem, _place) = (problem, place);
        var asked = Enumerable.Range(0, problem.Kinds.Count).Where(kind => problem.Kinds[kind].Count > 0 && problem.Kinds[kind].Places.Contains(place)).ToList();
        _uses = [.. problem.Boxes.Select(Uses)];
        _ways = [.. problem.Boxes.Select((box, number) => Enumerable.Range(0, problem.Kinds.Count).Select(kind => WaysOf((box, number), kind)).ToArray())];
        _kinds = [.. asked.OrderBy(kind => _ways.Count(ways => ways[kind].Count > 0)).ThenByDescending(Weight).ThenBy(kind => kind)];
    }

    /// <summary>How many there are to be served.</summary>
    public int Asked => _kinds.Sum(kind => _problem.Kinds[kind].Count);

    /// <summary>Fills boxes.</summary>
    /// <param name="boxes">Their numbers.</param>
    /// <returns>How many are left over, and what the boxes then hold; nothing where a link finds no port.</returns>
    public (int Left, List<PackedBox>? Boxes) Of(IReadOnlyList<int> boxes)
    {
        var open = boxes.Select(number => new Open(_problem.Boxes[number])).ToList();
        var head = _problem.Linked ? Linked(boxes, open) : 0;
        if (head < 0)
            return (Asked, null);
        var left = _kinds.Sum(kind => _problem.Kinds[kind].Count - Serve(kind, boxes, open));
        return (left, left > 0 ? null : [.. open.Select((box, i) => new PackedBox(_place, boxes[i], box.Items, [.. box.Links.Values]) { IsHead = _problem.Linked && i == head })]);
    }

    /// <summary>What boxes that were filled cost, links and what goes between included.</summary>
    public long Cost(IEnumerable<PackedBox> boxes) => boxes.Sum(packed =>
    {
        var box = _problem.Boxes[packed.Box];
        return box.Cost + packed.Items.Sum(item => item.Value * box.Serves[item.Key].Cost) + packed.Links.Sum(link => CostOf(box, link));
    });

    private long CostOf(PackBox box, PackedLinks links)
    {
        var each = box.Links.First(link => link.Group == links.Group);
        return links.Inner * (each.Inner ?? 0) + links.Outer * (each.Outer ?? 0) + links.Backbone * (each.BackboneFrom(_place) ?? 0);
    }

    private int Serve(int kind, IReadOnlyList<int> boxes, List<Open> open)
    {
        var asked = _problem.Kinds[kind].Count;
        for (var i = 0; i < open.Count && asked > 0; i++)
        {
            foreach (var way in _ways[boxes[i]][kind])
                asked -= open[i].Take(way, asked);
        }

        return _problem.Kinds[kind].Count - asked;
    }

    // The first box in which all that leaves the place finds a port leads; each other has one link to it.
    private int Linked(IReadOnlyList<int> boxes, List<Open> open)
    {
        var links = _problem.Links[_place];
        var head = Enumerable.Range(0, boxes.Count).FirstOrDefault(i => SetRows.CanLead(_problem.Boxes[boxes[i]], (links, _place), boxes.Count - 1), -1);
        for (var i = 0; i < boxes.Count && head >= 0; i++)
        {
            var uses = _uses[boxes[i]];
            var done = i == head
                ? open[i].Link(links.Line, uses, link => link.Outer, (at, n) => at with { Outer = n })
                    && open[i].Link(links.Backbone, uses, link => link.BackboneFrom(_place), (at, n) => at with { Backbone = n })
                    && open[i].Link(boxes.Count - 1, uses, link => link.Inner, (at, n) => at with { Inner = n })
                : open[i].Link(1, uses, link => link.Inner, (at, n) => at with { Inner = n });
            if (!done)
                return -1;
        }

        return head;
    }

    // What costs least first, and of that the ports that little else can use.
    private List<int> WaysOf((PackBox Box, int Number) of, int kind) =>
        [.. Enumerable.Range(0, of.Box.Serves.Count).Where(way => of.Box.Serves[way].Kind == kind).OrderBy(way => of.Box.Serves[way].Cost).ThenBy(way => _uses[of.Number][of.Box.Serves[way].Group]).ThenBy(way => way)];

    private static int[] Uses(PackBox box)
    {
        var uses = new int[box.Groups.Count];
        foreach (var serve in box.Serves.Where(serve => serve.Cost == 0))
            uses[serve.Group]++;
        return uses;
    }

    private double Weight(int kind) => _problem.Boxes
        .Select(box => box.Serves.Where(serve => serve.Kind == kind && serve.Cost == 0).Select(serve => Share(box, serve)).DefaultIfEmpty(0).Max())
        .DefaultIfEmpty(0).Max();

    private static double Share(PackBox box, PackServe serve)
    {
        var most = 0.0;
        for (var row = 0; row < serve.Loads.Count; row++)
            most = Math.Max(most, serve.Loads[row] / (double)Math.Max(1, box.Limits[row]));
        return most;
    }

    // A box while it is filled.
    private sealed class Open(PackBox box)
    {
        private readonly int[] _ports = [.. box.Groups];
        private readonly long[] _left = [.. box.Limits];

        public Dictionary<int, int> Items { get; } = [];

        public SortedDictionary<int, PackedLinks> Links { get; } = [];

        public int Take(int way, int asked)
        {
            var serve = box.Serves[way];
            var count = Math.Min(asked, _ports[serve.Group]);
            for (var row = 0; row < _left.Length; row++)
            {
                if (serve.Loads[row] > 0)
                    count = (int)Math.Min(count, _left[row] / serve.Loads[row]);
            }

            if (count <= 0)
                return 0;
            _ports[serve.Group] -= count;
            for (var row = 0; row < _left.Length; row++)
                _left[row] -= count * serve.Loads[row];
            Items[way] = Items.GetValueOrDefault(way) + count;
            return count;
        }

        public bool Link(int asked, int[] uses, Func<PackLink, long?> cost, Func<PackedLinks, int, PackedLinks> set)
        {
            foreach (var link in box.Links.Where(link => cost(link) is not null).OrderBy(link => cost(link)).ThenBy(link => uses[link.Group]).ThenBy(link => link.Group))
            {
                var count = Math.Min(asked, _ports[link.Group]);
                if (count <= 0)
                    continue;
                _ports[link.Group] -= count;
                Links[link.Group] = set(Links.GetValueOrDefault(link.Group) ?? new(link.Group, 0, 0, 0), count);
                asked -= count;
            }

            return asked <= 0;
        }
    }
}

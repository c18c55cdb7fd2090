namespace Headroom.Planning.Packing;

/// <summary>What a set of boxes of one place costs at the least, as far as can be said without packing it.</summary>
internal sealed class SetLeast
{
    // What a row says is made less by so much, for want of figures in a number [coins].
    private const double Coin = 0.01;

    private readonly PackProblem _problem;
    private readonly FamilyTable _table;
    private readonly PlaceLinks? _links;
    private readonly List<SetRow> _rows = [];
    private readonly List<double[]> _each = [];
    private readonly IReadOnlyList<int> _order;
    private readonly long _perBox;
    private readonly long _outward;
    private readonly int _place;

    /// <summary>Begins without rows.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="table">Its families.</param>
    /// <param name="place">The place that is used.</param>
    /// <param name="order">The order in which families are added.</param>
    /// <param name="perBox">What a box costs beyond its price.</param>
    public SetLeast(PackProblem problem, FamilyTable table, int place, IReadOnlyList<int> order, long perBox)
    {
        (_problem, _table, _place, _order, _perBox) = (problem, table, place, order, perBox);
        _links = problem.Linked ? problem.Links[place] : null;
        _outward = Outward(order);
        ByCost = [.. Enumerable.Range(0, problem.Extras.Count).OrderBy(extra => problem.Extras[extra].Cost)];
    }

    /// <summary>The extras by number, the cheapest first.</summary>
    public List<int> ByCost { get; }

    /// <summary>Adds a row, with the least that each share of it costs from each family on.</summary>
    public void Add(SetRow row)
    {
        var each = new double[_order.Count + 1];
        each[^1] = row.Lacking;
        for (var at = _order.Count - 1; at >= 0; at--)
        {
            var share = row.OfFamily[_order[at]];
            each[at] = share > 0 ? Math.Min(each[at + 1], (_table.Boxes[_order[at]].Cost + _perBox) / share) : each[at + 1];
        }

        _rows.Add(row);
        _each.Add(each);
    }

    /// <summary>Says whether an extra may hold a set.</summary>
    public bool Holds(int extra, int[] families) =>
        _problem.Extras[extra].Holds >= families.Sum(family => _table.Boxes[family].Draw) && (_problem.Extras[extra].Plugs ?? int.MaxValue) >= families.Sum(family => _table.Boxes[family].Plugs);

    /// <summary>What a part of a set costs at the least once it is whole, by the row that lacks most; null when it cannot become whole.</summary>
    /// <param name="families">The boxes that are in it.</param>
    /// <param name="from">From where in the order on more may be added.</param>
    public long? Open(int[] families, int from)
    {
        var more = 0.0;
        for (var row = 0; row < _rows.Count; row++)
            more = Math.Max(more, Missing(row, families, _each[row][from]));
        return double.IsPositiveInfinity(more) ? null : Boxes(families) + (long)Math.Ceiling(more - Coin) + _outward + Extra(families);
    }

    /// <summary>What a whole set costs at the least without its extra; null when something is lacking.</summary>
    public long? Whole(int[] families)
    {
        var between = 0.0;
        for (var row = 0; row < _rows.Count; row++)
            between = Math.Max(between, Missing(row, families, _rows[row].Lacking));
        return double.IsPositiveInfinity(between) || !CanLink(families) ? null : WithBetween(families, between);
    }

    /// <summary>What a whole set costs with what is known of what goes between.</summary>
    public long WithBetween(int[] families, double between) => Boxes(families) + (long)Math.Ceiling(between - Coin) + Outward(families);

    private long Boxes(int[] families)
    {
        var cost = 0L;
        foreach (var family in families)
            cost += _table.Boxes[family].Cost + _perBox;
        return cost;
    }

    // What is missing of a row at a price for all of it; nothing is that misses only a last figure.
    private double Missing(int row, int[] families, double price)
    {
        var lacks = 1.0;
        foreach (var family in families)
            lacks -= _rows[row].OfFamily[family];
        return lacks > SetRow.Slack ? (lacks - SetRow.Slack) * price : 0;
    }

    private bool CanLink(int[] families) => _links is null || families.Any(family => SetRows.CanLead(_table.Boxes[family], (_links, _place), families.Length - 1));

    // Links out of the place, at the least cost at which any box has them.
    private long Outward(IReadOnlyList<int> families)
    {
        if (_links is null)
            return 0;
        var all = families.SelectMany(family => _table.Boxes[family].Links).ToList();
        return _links.Line * Least(all.Select(link => link.Outer)) + _links.Backbone * Least(all.Select(link => link.BackboneFrom(_place)));
    }

    private static long Least(IEnumerable<long?> costs) => costs.Where(cost => cost is not null).Select(cost => cost!.Value).DefaultIfEmpty(0).Min();

    private long Extra(int[] families)
    {
        foreach (var extra in ByCost)
        {
            if (Holds(extra, families))
                return _problem.Extras[extra].Cost;
        }

        return ByCost.Count == 0 ? 0 : _problem.Extras[ByCost[^1]].Cost;
    }
}

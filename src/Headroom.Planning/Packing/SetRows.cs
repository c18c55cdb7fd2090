namespace Headroom.Planning.Packing;

/// <summary>
/// What every set of boxes of one place must have enough of: ports for each group of kinds that only some ports serve, ports for links too, and one box
/// that can bear the links that leave the place. Each follows from the exact packing, so that none bars a set into which all goes.
/// </summary>
internal sealed class SetRows
{
    // So many kinds that differ in the ports that serve them are taken in all combinations.
    private const int MostAlike = 7;

    private readonly PackProblem _problem;
    private readonly FamilyTable _table;
    private readonly int _place;
    private readonly List<int> _kinds;

    private SetRows(PackProblem problem, FamilyTable table, int place)
    {
        (_problem, _table, _place) = (problem, table, place);
        _kinds = [.. Enumerable.Range(0, problem.Kinds.Count).Where(kind => problem.Kinds[kind].Count > 0)];
    }

    /// <summary>The rows of a place.</summary>
    public static List<SetRow> Of(PackProblem problem, FamilyTable table, int place)
    {
        var rows = new SetRows(problem, table, place);
        return Strongest([.. rows.Ports(), .. rows.Links()]);
    }

    /// <summary>Says whether a box has ports for the links that leave its place and those to so many others in it.</summary>
    public static bool CanLead(PackBox box, (PlaceLinks Links, int Place) at, int others)
    {
        for (var bits = 1; bits < 8; bits++)
        {
            var (line, backbone, inner) = ((bits & 1) != 0, (bits & 2) != 0, (bits & 4) != 0);
            var asked = (line ? at.Links.Line : 0) + (backbone ? at.Links.Backbone : 0) + (inner ? others : 0);
            var ports = box.Links.Where(link => (line && link.Outer is not null) || (backbone && link.BackboneFrom(at.Place) is not null) || (inner && link.Inner is not null)).Sum(link => box.Groups[link.Group]);
            if (ports < asked)
                return false;
        }

        return true;
    }

    private IEnumerable<SetRow> Ports() => Combinations().Select(among => Row(family => PortsFor(family, among), among.Sum(kind => _problem.Kinds[kind].Count)));

    // Kinds that the same ports serve in every family are one.
    private List<HashSet<int>> Combinations()
    {
        var alike = _kinds.GroupBy(kind => string.Join('|', Enumerable.Range(0, _table.Families.Count).Select(family => PortsOf(family, kind)))).Select(group => group.ToList()).ToList();
        if (alike.Count == 0)
            return [];
        if (alike.Count > MostAlike)
            return [.. alike.Select(group => group.ToHashSet()), [.. _kinds]];
        return [.. Enumerable.Range(1, (1 << alike.Count) - 1).Select(bits => Enumerable.Range(0, alike.Count).Where(i => (bits & (1 << i)) != 0).SelectMany(i => alike[i]).ToHashSet())];
    }

    private string PortsOf(int family, int kind) =>
        string.Join(',', _table.Ways[family].Where(way => way.Kind == kind).SelectMany(way => way.Groups).Distinct().Order());

    private double PortsFor(int family, HashSet<int> among) => _table.Ways[family]
        .Where(way => among.Contains(way.Kind)).SelectMany(way => way.Groups).Distinct().Sum(group => (double)_table.Boxes[family].Groups[group]);

    // Links take ports as well, two for each box but the head; and some box must be able to be the head.
    private IEnumerable<SetRow> Links()
    {
        if (!_problem.Linked)
            yield break;
        var links = _problem.Links[_place];
        var needed = _kinds.Sum(kind => _problem.Kinds[kind].Count) + links.Line + links.Backbone - 2;
        if (needed > 0)
            yield return Row(family => _table.Boxes[family].Groups.Sum() - 2, needed);
        yield return Row(family => CanLead(_table.Boxes[family], (links, _place), 0) ? 1 : 0, 1);
    }

    private SetRow Row(Func<int, double> ofFamily, double needed) =>
        new([.. Enumerable.Range(0, _table.Families.Count).Select(family => ofFamily(family) / needed)], double.PositiveInfinity);

    // A row that gives every family at least as much as another says nothing new.
    private static List<SetRow> Strongest(List<SetRow> rows) =>
        [.. rows.Where((row, i) => !rows.Where((other, j) => i != j && Implies(other, row) && (j < i || !Implies(row, other))).Any())];

    private static bool Implies(SetRow one, SetRow other)
    {
        for (var i = 0; i < one.OfFamily.Length; i++)
        {
            if (one.OfFamily[i] > other.OfFamily[i])
                return false;
        }

        return true;
    }
}

namespace Headroom.Planning.Packing;

/// <summary>What can be bought, with the ways in which kinds can be served by each of it.</summary>
internal sealed class FamilyTable
{
    /// <summary>Reads a problem.</summary>
    public FamilyTable(PackProblem problem)
    {
        Families = [.. problem.Boxes.Select((box, i) => (box, i)).GroupBy(at => at.box.Family).Select(group => group.Select(at => at.i).ToList())];
        Boxes = [.. Families.Select(family => problem.Boxes[family[0]])];
        Limits = [.. Families.Select(family => LimitsOf(problem, family))];
        Ways = [.. Families.Select(family => WaysOf(problem, family))];
    }

    /// <summary>The boxes of each family: they differ in how they are set.</summary>
    public List<List<int>> Families { get; }

    /// <summary>One box of each family, for what all of it share.</summary>
    public List<PackBox> Boxes { get; }

    /// <summary>The most that each family has of each limit, however it is set.</summary>
    public List<long[]> Limits { get; }

    /// <summary>The ways in which each family serves kinds.</summary>
    public List<List<WayClass>> Ways { get; }

    private static long[] LimitsOf(PackProblem problem, List<int> family)
    {
        var limits = problem.Boxes[family[0]].Limits.ToArray();
        foreach (var box in family)
        {
            for (var row = 0; row < limits.Length; row++)
                limits[row] = Math.Max(limits[row], problem.Boxes[box].Limits[row]);
        }

        return limits;
    }

    private static List<WayClass> WaysOf(PackProblem problem, List<int> family)
    {
        var ways = new Dictionary<(int Kind, string? Via), WayClass>();
        foreach (var serve in family.SelectMany(box => problem.Boxes[box].Serves).Where(serve => problem.Kinds[serve.Kind].Count > 0))
        {
            var key = (serve.Kind, serve.Via);
            if (!ways.TryGetValue(key, out var way))
                ways[key] = way = new(serve.Kind, serve.Via is not null, serve.Cost, [.. serve.Loads], []);
            for (var row = 0; row < Math.Min(way.Loads.Length, serve.Loads.Count); row++)
                way.Loads[row] = Math.Min(way.Loads[row], serve.Loads[row]);
            way.Groups.Add(serve.Group);
            ways[key] = way with { Cost = Math.Min(way.Cost, serve.Cost) };
        }

        return [.. ways.Values];
    }
}

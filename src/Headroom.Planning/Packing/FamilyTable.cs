namespace Headroom.Planning.Packing;

/// <summary>What can be bought, with the ways in which kinds can be served by any of it.</summary>
internal sealed class FamilyTable
{
    /// <summary>Reads a problem.</summary>
    public FamilyTable(PackProblem problem)
    {
        Families = [.. problem.Boxes.Select((box, i) => (box, i)).GroupBy(at => at.box.Family).Select(group => group.Select(at => at.i).ToList())];
        Boxes = [.. Families.Select(family => problem.Boxes[family[0]])];
        var first = 0;
        FirstPort = new int[Families.Count];
        for (var f = 0; f < Families.Count; f++)
        {
            FirstPort[f] = first;
            first += Boxes[f].Groups.Count;
        }

        Limits = [.. Families.Select(family => LimitsOf(problem, family))];
        Ways = WaysOf(problem);
    }

    /// <summary>The boxes of each family: they differ in how they are set.</summary>
    public List<List<int>> Families { get; }

    /// <summary>One box of each family, for what all of it share.</summary>
    public List<PackBox> Boxes { get; }

    /// <summary>The number of the first group of ports of each family among all.</summary>
    public int[] FirstPort { get; }

    /// <summary>The most that each family has of each limit, however it is set.</summary>
    public List<long[]> Limits { get; }

    /// <summary>The ways in which kinds can be served.</summary>
    public List<WayClass> Ways { get; }

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

    private List<WayClass> WaysOf(PackProblem problem)
    {
        var ways = new Dictionary<(int Kind, string? Via), WayClass>();
        for (var f = 0; f < Families.Count; f++)
        {
            foreach (var serve in Families[f].SelectMany(box => problem.Boxes[box].Serves))
            {
                var key = (serve.Kind, serve.Via);
                if (!ways.TryGetValue(key, out var way))
                    ways[key] = way = new(serve.Kind, serve.Cost, [.. serve.Loads], serve.Via is not null, []);
                for (var row = 0; row < Math.Min(way.Loads.Length, serve.Loads.Count); row++)
                    way.Loads[row] = Math.Min(way.Loads[row], serve.Loads[row]);
                ways[key] = way with { Cost = Math.Min(way.Cost, serve.Cost) };
                way.Ports.Add(FirstPort[f] + serve.Group);
            }
        }

        return [.. ways.Values];
    }
}

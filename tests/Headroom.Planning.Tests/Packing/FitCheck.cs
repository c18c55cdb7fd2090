using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

// Goes through a packing by itself: everything is served once, and no port and no limit is overdrawn.
internal static class FitCheck
{
    public static void Holds(PackProblem problem, Packed packed)
    {
        var served = new int[problem.Kinds.Count];
        var cost = 0L;
        foreach (var packedBox in packed.Boxes)
        {
            var box = problem.Boxes[packedBox.Box];
            cost += box.Cost;
            var ports = new int[box.Groups.Count];
            var loads = new long[box.Limits.Count];
            foreach (var (way, count) in packedBox.Items)
            {
                var serve = box.Serves[way];
                Assert.Contains(packedBox.Place, problem.Kinds[serve.Kind].Places);
                served[serve.Kind] += count;
                ports[serve.Group] += count;
                cost += serve.Cost * count;
                for (var row = 0; row < loads.Length; row++)
                    loads[row] += serve.Loads[row] * count;
            }

            Assert.All(Enumerable.Range(0, ports.Length), group => Assert.InRange(ports[group], 0, box.Groups[group]));
            Assert.All(Enumerable.Range(0, loads.Length), row => Assert.InRange(loads[row], 0, box.Limits[row]));
        }

        Assert.Equal(problem.Kinds.Select(kind => kind.Count), served);
        Assert.Equal(packed.Cost, cost);
    }
}

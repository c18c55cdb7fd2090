using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

// Tries everything: each thing into each free port of each open box, or into a new one. No idea of the planner is used.
internal static class BruteForce
{
    public static long? Least(PackProblem problem)
    {
        var things = problem.Kinds.SelectMany((kind, i) => Enumerable.Repeat(i, kind.Count)).ToList();
        long? best = null;
        Try(problem, things, 0, [], 0, ref best, []);
        return best;
    }

    private static void Try(PackProblem problem, List<int> things, int at, List<Open> open, long cost, ref long? best, Dictionary<string, long> seen)
    {
        if (cost >= best)
            return;
        if (at == things.Count)
        {
            best = cost;
            return;
        }

        var state = $"{at}|{string.Join(';', open.Select(box => box.Key).Order(StringComparer.Ordinal))}";
        if (seen.TryGetValue(state, out var before) && before <= cost)
            return;
        seen[state] = cost;
        for (var i = 0; i <= open.Count; i++)
        {
            foreach (var box in i < open.Count ? [open[i]] : News(problem, things[at]))
            {
                foreach (var serve in problem.Boxes[box.Box].Serves.Where(serve => serve.Kind == things[at] && problem.Kinds[things[at]].Places.Contains(box.Place)))
                {
                    if (box.With(serve) is not { } filled)
                        continue;
                    List<Open> next = [.. open.Where((_, j) => j != i), filled];
                    Try(problem, things, at + 1, next, cost + serve.Cost + (i == open.Count ? problem.Boxes[box.Box].Cost : 0), ref best, seen);
                }
            }
        }
    }

    private static IEnumerable<Open> News(PackProblem problem, int kind) =>
        from place in problem.Kinds[kind].Places
        from box in Enumerable.Range(0, problem.Boxes.Count)
        select new Open(place, box, [.. problem.Boxes[box].Groups], [.. problem.Boxes[box].Limits]);

    private sealed record Open(int Place, int Box, int[] Ports, long[] Left)
    {
        public string Key => $"{Place},{Box},{string.Join('/', Ports)},{string.Join('/', Left)}";

        public Open? With(PackServe serve)
        {
            if (Ports[serve.Group] == 0 || serve.Loads.Where((load, row) => load > Left[row]).Any())
                return null;
            return this with { Ports = [.. Ports.Select((port, group) => group == serve.Group ? port - 1 : port)], Left = [.. Left.Select((left, row) => left - serve.Loads[row])] };
        }
    }
}

namespace Headroom.Planning.Packing;

/// <summary>A packing found at once, for a first upper bound: each box alone, and the cheapest for each kind.</summary>
internal static class Greedy
{
    /// <summary>What a quick packing costs; null when none was found.</summary>
    public static long? Of(PackProblem problem)
    {
        long? best = null;
        for (var box = 0; box < problem.Boxes.Count; box++)
        {
            if (problem.Boxes[box].Most is null && Alone(problem, box) is { } cost && (best is null || cost < best))
                best = cost;
        }

        return best ?? Apart(problem);
    }

    // First fit, the heaviest first; all in boxes of one kind, all reachable from everywhere.
    private static long? Alone(PackProblem problem, int number)
    {
        var box = problem.Boxes[number];
        var places = Enumerable.Range(0, problem.Places).Where(place => box.Places?.Contains(place) != false).ToList();
        var open = new List<(int Place, int[] Ports, long[] Left)>();
        var cost = 0L;
        foreach (var kind in Enumerable.Range(0, problem.Kinds.Count).OrderByDescending(kind => Weight(box, kind)))
        {
            for (var i = 0; i < problem.Kinds[kind].Count; i++)
            {
                var place = problem.Kinds[kind].Places.FirstOrDefault(places.Contains, -1);
                if (place < 0)
                    return null;
                if (open.Exists(at => at.Place == place && Take(box, kind, at)))
                    continue;
                (int, int[], long[]) next = (place, [.. box.Groups], [.. box.Limits]);
                if (!Take(box, kind, next))
                    return null;
                open.Add(next);
                cost += box.Cost;
            }
        }

        return cost;
    }

    private static bool Take(PackBox box, int kind, (int Place, int[] Ports, long[] Left) at)
    {
        foreach (var serve in box.Serves.Where(serve => serve.Kind == kind && serve.Cost == 0 && at.Ports[serve.Group] > 0 && Fits(serve, at.Left)))
        {
            at.Ports[serve.Group]--;
            for (var row = 0; row < at.Left.Length; row++)
                at.Left[row] -= serve.Loads[row];
            return true;
        }

        return false;
    }

    private static bool Fits(PackServe serve, long[] left)
    {
        for (var row = 0; row < left.Length; row++)
        {
            if (serve.Loads[row] > left[row])
                return false;
        }

        return true;
    }

    private static double Weight(PackBox box, int kind) =>
        box.Serves.Where(serve => serve.Kind == kind).Select(serve => serve.Loads.Select((load, row) => load / (double)Math.Max(1, box.Limits[row])).DefaultIfEmpty(0).Max()).DefaultIfEmpty(0).Max();

    // Each kind by itself in its own boxes.
    private static long? Apart(PackProblem problem)
    {
        var sum = 0L;
        for (var kind = 0; kind < problem.Kinds.Count; kind++)
        {
            if (problem.Kinds[kind].Count == 0)
                continue;
            var only = problem with { Kinds = [.. problem.Kinds.Select((at, i) => i == kind ? at : at with { Count = 0 })] };
            long? best = null;
            for (var box = 0; box < problem.Boxes.Count; box++)
            {
                if (problem.Boxes[box].Most is null && Alone(only, box) is { } cost && (best is null || cost < best))
                    best = cost;
            }

            if (best is null)
                return null;
            sum += best.Value;
        }

        return sum;
    }
}

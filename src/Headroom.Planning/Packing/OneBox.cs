namespace Headroom.Planning.Packing;

/// <summary>Problems with one box, one group of ports and one limit: as many boxes as the bound says are often found at once, and else patterns prove it.</summary>
internal sealed class OneBox
{
    private readonly PackProblem _problem;
    private readonly PackBox _box;
    private readonly List<(int Way, long Load, int Count)> _items;

    private OneBox(PackProblem problem)
    {
        (_problem, _box) = (problem, problem.Boxes[0]);
        // The heaviest first: what fills a box most leaves least over.
        _items = [.. _box.Serves.Select((serve, way) => (Way: way, Load: serve.Loads[0], problem.Kinds[serve.Kind].Count)).Where(item => item.Count > 0).OrderByDescending(item => item.Load)];
    }

    /// <summary>True for a problem of this kind.</summary>
    public static bool Fits(PackProblem problem) => problem is { Places: 1, Links.Count: 0, Extras.Count: 0, Boxes: [{ Groups.Count: 1, Limits.Count: 1, Most: null, Cost: > 0 } box] }
        && box.Serves.All(serve => serve.Cost == 0) && box.Serves.Select(serve => serve.Kind).Distinct().Count() == box.Serves.Count;

    /// <summary>Packs it.</summary>
    public static Packed Solve(PackProblem problem, PackEffort effort)
    {
        var box = problem.Boxes[0];
        var served = box.Serves.Where(serve => serve.Loads[0] <= box.Limits[0] && box.Groups[0] > 0).Select(serve => serve.Kind).ToHashSet();
        return Enumerable.Range(0, problem.Kinds.Count).Any(kind => problem.Kinds[kind].Count > 0 && !served.Contains(kind))
            ? Packed.Nothing
            : new OneBox(problem).Solve(effort);
    }

    private Packed Solve(PackEffort effort)
    {
        var bound = BoxBounds.Least([.. _items.Select(item => (item.Load, item.Count))], _box.Limits[0], _box.Groups[0]);
        var found = Fullest();
        effort.Told?.Invoke(found.Count * _box.Cost, bound * _box.Cost);
        if (found.Count == bound)
            return Result(found, bound);
        var patterns = Patterns.Of(_items, _box.Limits[0], _box.Groups[0]);
        var better = patterns is null ? null : PatternModel.Solve(patterns, _items, (bound, found.Count), effort);
        return better is { } whole ? Result(whole.Boxes ?? found, whole.Bound) : Exact(found, bound, effort);
    }

    // Too many patterns: the model of single boxes.
    private Packed Exact(List<int[]> found, long bound, PackEffort effort)
    {
        var model = new CountModel(_problem, Packer.Slots(_problem, found.Count * _box.Cost)).Solve(effort);
        var best = Math.Max(bound * _box.Cost, model.Bound ?? 0);
        return model.Cost is { } cost && cost < found.Count * _box.Cost ? model with { Bound = Math.Min(cost, best) } : Result(found, best / _box.Cost);
    }

    private Packed Result(List<int[]> boxes, long bound) => new(
        boxes.Count * _box.Cost,
        Math.Min(bound, boxes.Count) * _box.Cost,
        [.. boxes.Select(box => new PackedBox(0, 0, Items(box), []))]);

    private Dictionary<int, int> Items(int[] counts) =>
        Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0).ToDictionary(i => _items[i].Way, i => counts[i]);

    // Box by box, each with the heaviest item left and beside it whatever fills it best.
    private List<int[]> Fullest()
    {
        var left = _items.Select(item => item.Count).ToArray();
        var boxes = new List<int[]>();
        while (Array.FindIndex(left, count => count > 0) is var first and >= 0)
        {
            var best = new FullestBox(_items, left, _box.Limits[0], _box.Groups[0]).With(first);
            for (var i = 0; i < left.Length; i++)
                left[i] -= best[i];
            boxes.Add(best);
        }

        return boxes;
    }
}

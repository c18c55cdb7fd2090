namespace Headroom.Planning.Packing;

/// <summary>Finds the rows that follow from all limits together: for each set of boxes that alone can serve some kinds, ports and loads in sum.</summary>
internal static class CoverRows
{
    /// <summary>The rows for some kinds, wherever they are served.</summary>
    public static IEnumerable<CoverRow> Of(PackProblem problem, IReadOnlyList<int> kinds)
    {
        var sets = new List<(bool[] Boxes, List<int> Kinds)>();
        foreach (var kind in kinds.Where(kind => problem.Kinds[kind].Count > 0))
        {
            var boxes = problem.Boxes.Select(box => box.Serves.Any(serve => serve.Kind == kind)).ToArray();
            if (!sets.Exists(set => set.Boxes.AsSpan().SequenceEqual(boxes)))
                sets.Add((boxes, []));
        }

        foreach (var (boxes, inside) in sets)
        {
            inside.AddRange(kinds.Where(kind => problem.Boxes.Select((box, i) => (box, i)).All(at => boxes[at.i] || !at.box.Serves.Any(serve => serve.Kind == kind))));
            yield return Ports(problem, boxes, inside);
            foreach (var row in Loads(problem, boxes, inside))
                yield return row;
        }
    }

    private static CoverRow Ports(PackProblem problem, bool[] boxes, List<int> kinds) => new(
        [.. problem.Boxes.Select((box, i) => boxes[i] ? box.Serves.Where(serve => kinds.Contains(serve.Kind)).Select(serve => serve.Group).Distinct().Sum(group => (long)box.Groups[group]) : 0)],
        kinds.Sum(kind => (long)problem.Kinds[kind].Count));

    private static IEnumerable<CoverRow> Loads(PackProblem problem, bool[] boxes, List<int> kinds)
    {
        var serving = problem.Boxes.Where((_, i) => boxes[i]).ToList();
        var rows = serving.Count == 0 ? 0 : serving.Min(box => box.Limits.Count);
        for (var row = 0; row < rows; row++)
        {
            var asked = kinds.Sum(kind => problem.Kinds[kind].Count * serving.SelectMany(box => box.Serves).Where(serve => serve.Kind == kind).Min(serve => serve.Loads[row]));
            yield return new([.. problem.Boxes.Select((box, i) => boxes[i] ? box.Limits[row] : 0)], asked);
        }
    }
}

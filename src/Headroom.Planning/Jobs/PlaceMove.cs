namespace Headroom.Planning.Jobs;

/// <summary>Takes what was found for one place over to another that comes to the same.</summary>
internal sealed class PlaceMove(JobPacking packing, int from, int to)
{
    private readonly List<int> _from = KindsOf(packing, from);
    private readonly List<int> _to = KindsOf(packing, to);

    /// <summary>The same boxes with the same things in them, elsewhere.</summary>
    public Candidate Of(Candidate found) => found with
    {
        Set = new(found.Set.Boxes.ToDictionary(at => (to, at.Key.Family), at => at.Value), [.. found.Set.Extras.Select(Extra)]),
        Packed = found.Packed with { Boxes = [.. found.Packed.Boxes.Select(box => box with { Place = to, Items = box.Items.ToDictionary(item => Way(box.Box, item.Key), item => item.Value) })] },
    };

    private static List<int> KindsOf(JobPacking packing, int place) =>
        [.. Enumerable.Range(0, packing.Kinds.Count).Where(kind => packing.Kinds[kind].Places.Contains(place))];

    private int Way(int box, int way)
    {
        var was = packing.Boxes[box].Ways[way];
        var kind = _to[_from.IndexOf(was.Kind)];
        var ways = packing.Boxes[box].Ways;
        return Enumerable.Range(0, ways.Count).First(i => ways[i].Kind == kind && ways[i].Group == was.Group && ways[i].Via?.Id == was.Via?.Id && ways[i].Unit == was.Unit);
    }

    private int Extra(int extra)
    {
        var extras = packing.Problem.Extras;
        var among = Enumerable.Range(0, extra).Count(i => extras[i].Place == from);
        return Enumerable.Range(0, extras.Count).Where(i => extras[i].Place == to).ElementAt(among);
    }
}

namespace Headroom.Planning.Packing;

/// <summary>One place of a campus with kinds alike counted together, and the way back to the single kinds.</summary>
internal sealed class PlacePool
{
    private readonly PackProblem _single;
    private readonly Pools _pools;

    private PlacePool(PackProblem single, Pools pools, PackProblem problem) => (_single, _pools, Problem) = (single, pools, problem);

    /// <summary>The place with kinds alike counted together.</summary>
    public PackProblem Problem { get; }

    /// <summary>Counts together.</summary>
    public static PlacePool Of(PackProblem single, int place)
    {
        var pools = new Pools(single);
        var kinds = pools.Members.Select((members, pool) => new PackKind($"{pool}", members.Sum(kind => single.Kinds[kind].Count), [0])).ToList();
        var boxes = single.Boxes.Select(box => box with
        {
            Places = null,
            Serves = [.. pools.Members.SelectMany((members, pool) => box.Serves.Where(serve => serve.Kind == members[0]).Select(serve => serve with { Kind = pool }))],
        });
        return new(single, pools, new PackProblem(1, kinds, [.. boxes.Where(box => single.Boxes.First(one => one.Id == box.Id).Places?.Contains(place) != false)]));
    }

    /// <summary>As many slots as boxes of no more than some cost can be.</summary>
    public static List<PackSlot> Slots(PackProblem problem, long most) => Packer.Slots(problem, most);

    /// <summary>The boxes with single kinds in them again.</summary>
    public List<PackedBox> Apart(IReadOnlyList<PackedBox> boxes, int place)
    {
        var left = _single.Kinds.Select(kind => kind.Count).ToArray();
        return [.. boxes.Select(packed => Apart(packed, place, left))];
    }

    private PackedBox Apart(PackedBox packed, int place, int[] left)
    {
        var box = Problem.Boxes[packed.Box];
        var number = Enumerable.Range(0, _single.Boxes.Count).First(i => _single.Boxes[i].Id == box.Id);
        var items = new Dictionary<int, int>();
        foreach (var (way, count) in packed.Items)
        {
            var (serve, open) = (box.Serves[way], count);
            foreach (var kind in _pools.Members[serve.Kind])
            {
                var taken = Math.Min(open, left[kind]);
                if (taken == 0)
                    continue;
                open -= taken;
                left[kind] -= taken;
                var single = _single.Boxes[number].Serves.Select((one, i) => (one, i)).First(at => at.one.Kind == kind && at.one.Group == serve.Group && at.one.Via == serve.Via).i;
                items[single] = items.GetValueOrDefault(single) + taken;
            }
        }

        return new(place, number, items, []);
    }
}

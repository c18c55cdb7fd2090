namespace Headroom.Planning.Packing;

/// <summary>Packs a campus: who goes where first, a few places at a time made better, then each place exactly.</summary>
internal static class LargePacking
{
    // Beyond so many single boxes and ways the exact model of all is no longer the quicker one.
    private const long Large = 40_000;

    // So many places at a time are looked at again; the rest stays.
    private const int Window = 8;

    /// <summary>True for a problem that is better packed so.</summary>
    public static bool Fits(PackProblem problem, long slots) =>
        problem is { Places: > 1, Linked: false, Extras.Count: 0 } && slots * problem.Boxes.Max(box => box.Serves.Count) > Large && problem.Boxes.All(box => box.Most is null && box.Serves.All(serve => serve.Cost == 0));

    /// <summary>Packs it.</summary>
    public static Packed Solve(PackProblem problem, PackEffort effort)
    {
        var (shares, bound) = new AggregateModel(problem).Solve(effort with { Work = effort.Work * 0.5 });
        if (shares is null)
            return new(null, bound, []);
        effort.Told?.Invoke(shares.Cost, bound ?? 0);
        shares = Better(problem, shares, effort);
        var boxes = Enumerable.Range(0, problem.Places).Select(place => Place(problem, shares, place, effort)).ToList();
        return boxes.Exists(packed => packed.Cost is null)
            ? new(null, bound, [])
            : new(boxes.Sum(packed => packed.Cost), Math.Min(bound ?? 0, boxes.Sum(packed => packed.Cost!.Value)), [.. boxes.SelectMany(packed => packed.Boxes)]);
    }

    // Places beside one another share what both reach: window by window, until a whole round brings nothing.
    private static PlaceShares Better(PackProblem problem, PlaceShares shares, PackEffort effort)
    {
        var each = effort.Work * 0.5 / (3.0 * problem.Places / (Window / 2.0));
        for (var round = 0; round < 3; round++)
        {
            var before = shares.Cost;
            for (var first = 0; first < problem.Places && !effort.Stop.IsCancellationRequested; first += Window / 2)
            {
                var free = Enumerable.Range(first, Window).Select(place => place % problem.Places).ToHashSet();
                if (new AggregateModel(problem).Solve(effort with { Work = each }, shares, free).Shares is { } better && better.Cost < shares.Cost)
                    shares = better;
            }

            if (shares.Cost == before)
                break;
        }

        return shares;
    }

    private static Packed Place(PackProblem problem, PlaceShares shares, int place, PackEffort effort)
    {
        var one = problem with { Kinds = [.. problem.Kinds.Select((kind, i) => kind with { Count = kind.Places.Contains(place) ? shares.Goes[(i, place)] : 0, Places = [place] })] };
        if (one.Kinds.All(kind => kind.Count == 0))
            return new(0, 0, []);
        var most = Enumerable.Range(0, problem.Boxes.Count).Sum(box => shares.Bought[place, box] * problem.Boxes[box].Cost);
        var pooled = PlacePool.Of(one, place);
        var cheapest = problem.Boxes.Min(box => box.Cost);
        var packed = new CountModel(pooled.Problem, PlacePool.Slots(pooled.Problem, most + cheapest)).Solve(effort with { Work = effort.Work * 0.02, Told = null });
        return packed.Cost is null ? packed : packed with { Boxes = pooled.Apart(packed.Boxes, place) };
    }
}

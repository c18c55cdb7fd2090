namespace Headroom.Planning.Packing;

/// <summary>Packs at the least cost, and says how far from the least possible it may be.</summary>
public static class Packer
{
    /// <summary>Packs a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">How hard to look.</param>
    /// <returns>The best packing found and the bound; the same for the same input.</returns>
    public static Packed Solve(PackProblem problem, PackEffort effort)
    {
        if (problem.Kinds.All(kind => kind.Count == 0))
            return new(0, 0, []);
        if (OneBox.Fits(problem))
            return OneBox.Solve(problem, effort);
        var slots = Slots(problem, Greedy.Of(problem));
        return LargePacking.Fits(problem, slots.Count) ? LargePacking.Solve(problem, effort) : new CountModel(problem, slots).Solve(effort);
    }

    /// <summary>As many slots for each box as a packing that is no dearer than a known one can have.</summary>
    internal static List<PackSlot> Slots(PackProblem problem, long? most)
    {
        var slots = new List<PackSlot>();
        for (var place = 0; place < problem.Places; place++)
        {
            for (var number = 0; number < problem.Boxes.Count; number++)
            {
                var count = Count(problem, (place, number), most);
                var alike = slots.Count;
                for (var i = 0; i < count; i++)
                    slots.Add(new(place, [number], Must: false, alike));
            }
        }

        return slots;
    }

    private static int Count(PackProblem problem, (int Place, int Box) at, long? most)
    {
        var box = problem.Boxes[at.Box];
        var items = box.Serves.Select(serve => serve.Kind).Distinct().Where(kind => problem.CanServe(at.Place, box, kind)).Sum(kind => problem.Kinds[kind].Count);
        var affordable = most is { } cost && box.Cost > 0 ? (int)Math.Min(int.MaxValue, cost / box.Cost) : int.MaxValue;
        return Math.Min(Math.Min(items, affordable), box.Most ?? int.MaxValue);
    }
}

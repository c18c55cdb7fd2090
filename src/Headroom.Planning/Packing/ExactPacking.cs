namespace Headroom.Planning.Packing;

/// <summary>Packs into a set that is bought already, at the least cost of what goes between and of links.</summary>
internal static class ExactPacking
{
    /// <summary>Packs it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="table">Its families.</param>
    /// <param name="set">What is bought.</param>
    /// <param name="barred">Fillings that must not come again.</param>
    /// <param name="tooMuch">What was found to be too much for single boxes.</param>
    /// <param name="effort">How hard to look.</param>
    /// <param name="most">The most it may cost, boxes and extras included; null for any cost.</param>
    public static Packed Of(
        PackProblem problem, FamilyTable table, BoughtSet set, IReadOnlyList<IReadOnlyList<PackedBox>> barred, IReadOnlyList<PackedBox> tooMuch, PackEffort effort, long? most = null)
    {
        var slots = new List<PackSlot>();
        foreach (var (at, count) in set.Boxes.OrderBy(at => at.Key))
        {
            var alike = slots.Count;
            for (var i = 0; i < count; i++)
                slots.Add(new(at.Place, table.Families[at.Family], Must: true, alike));
        }

        var model = new CountModel(problem, slots);
        foreach (var extra in set.Extras.Select(extra => problem.Extras[extra]).Where(extra => extra.Plugs is not null))
            model.Between(extra.Place, extra.Plugs!.Value - slots.Where(slot => slot.Place == extra.Place).Sum(slot => problem.Boxes[slot.Boxes[0]].Plugs));
        foreach (var filling in barred)
            model.Bar(filling);
        foreach (var box in tooMuch)
            model.TooMuch(box.Box, box.Items);
        var extras = set.Extras.Sum(extra => problem.Extras[extra].Cost);
        if (most is { } limit)
            model.Costs(limit - extras);
        var packed = model.Solve(effort with { Told = null });
        return packed.Cost is null ? packed : packed with { Cost = packed.Cost + extras, Bound = packed.Bound + extras };
    }
}

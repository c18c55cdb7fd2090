using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>How far a design is from the one of today.</summary>
internal static class TodayDistance
{
    /// <summary>Units bought anew, then units taken away, then cords moved: the first counts most.</summary>
    public static int Of(Design design, Design today)
    {
        var (before, after) = (Models(today), Models(design));
        var added = after.Sum(model => Math.Max(0, model.Value - before.GetValueOrDefault(model.Key)));
        var removed = before.Sum(model => Math.Max(0, model.Value - after.GetValueOrDefault(model.Key)));
        return 10_000 * added + 100 * removed + Math.Min(99, Moved(design, today));
    }

    /// <summary>Cords that end elsewhere: on another model, or on another port of it.</summary>
    public static int Moved(Design design, Design today)
    {
        var before = today.Patch.ToDictionary(patch => patch.What, patch => End(today, patch.To));
        return design.Patch.Count(patch => before.TryGetValue(patch.What, out var was) && was != End(design, patch.To));
    }

    private static (string? Model, int? Port) End(Design design, PortRef port) =>
        (design.Switches.FirstOrDefault(unit => unit.Id == port.Unit)?.Model ?? design.Injectors.FirstOrDefault(unit => unit.Id == port.Unit)?.Model, port.Port);

    private static Dictionary<string, int> Models(Design design) =>
        design.Switches.Select(unit => $"{unit.Model}/{unit.Supply}").Concat(design.Injectors.Select(unit => unit.Model!)).Concat(design.Standby.Select(unit => unit.Model!))
            .GroupBy(model => model).ToDictionary(group => group.Key, group => group.Count());
}

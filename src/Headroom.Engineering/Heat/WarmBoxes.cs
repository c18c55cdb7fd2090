using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Heat;

/// <summary>Makes out of a surveyed cupboard, or of a cabinet of the catalogue, what heat has to do with.</summary>
internal static class WarmBoxes
{
    // Where nobody wrote how far apart vents are: half the height of the cupboard, on the safe side of one low and one high.
    private const double AssumedApart = 0.5;

    /// <summary>Says whether a space shuts its air off, so that equipment warms it.</summary>
    public static bool Encloses(Space space) => space.Enclosure is not null || space.Kind == "cupboard";

    /// <summary>The box of a cupboard.</summary>
    public static WarmBox Of(Space space)
    {
        var enclosure = space.Enclosure;
        if (space.Size is not { Value: var size })
            return Asking($"how long, wide and high is {space.Id}?");
        if (enclosure is null || enclosure.Exposed.Count == 0)
            return Asking($"which faces of {space.Id} touch the air around it? write exposed: front, sides, top ...");
        if (WallTable.Of(enclosure.Walls) is not { } walls)
            return Asking(enclosure.Walls is { } words ? $"what are the walls of {space.Id} made of? '{words}' is not known here: say board, plasterboard, steel, glass or brick, with its mm" : $"what are the walls of {space.Id} made of, and how thick?");
        var area = 0.0;
        foreach (var face in enclosure.Exposed)
        {
            area += face switch
            {
                "front" or "back" => size.Length * size.Height,
                "left" or "right" => size.Width * size.Height,
                "sides" => 2 * size.Width * size.Height,
                _ => size.Length * size.Width,
            };
        }

        var box = new WarmBox(walls.Coefficient * area, area, walls.Coefficient, walls.How);
        return Vented(box, space, enclosure, size.Height);
    }

    /// <summary>The box of a closed cabinet; null for a frame or shelf.</summary>
    public static WarmBox? Of(CabinetModel cabinet)
    {
        if (cabinet.Kind != "cabinet")
            return null;
        if (cabinet.Body is not { Width: { } width, Depth: { } depth, Height: { } height })
            return Asking($"how wide, deep and high is the cabinet {cabinet.Id}?");
        var area = ClosedBox.EffectiveArea(BoxPosition.BackToWall, width.Value.Value, depth.Value.Value, height.Value.Value);
        var half = (cabinet.VentArea?.Value.Value ?? 0) / 2;
        return new WarmBox(ClosedBox.SheetSteel * area, area, ClosedBox.SheetSteel, "painted sheet steel, its back to a wall")
        {
            VentArea = half > 0 ? Vents.Together(half, half) : 0,
            VentsApart = AssumedApart * height.Value.Value,
            Assumed = [$"cabinet {cabinet.Id} stands with its back to a wall; {(half > 0 ? "half of its vents low and half high, half its height apart" : "no vents, for none are in the catalogue")}"],
        };
    }

    private static WarmBox Vented(WarmBox box, Space space, Enclosure enclosure, double height)
    {
        if (enclosure.Vents is not { } vents)
            return box with { Assumed = [$"nobody wrote the vents of {space.Id}: none taken"] };
        if (vents.Value.Value == 0)
            return box;
        var (half, apart) = (vents.Value.Value / 2, enclosure.VentsApart?.Value.Value ?? AssumedApart * height);
        return box with
        {
            VentArea = Vents.Together(half, half),
            VentsApart = apart,
            Assumed = [$"half of the vents of {space.Id} low and half high{(enclosure.VentsApart is null ? $", {Words.Of(apart)} m apart" : "")}"],
        };
    }

    private static WarmBox Asking(string question) => new(null, null, null, "") { Question = question };
}

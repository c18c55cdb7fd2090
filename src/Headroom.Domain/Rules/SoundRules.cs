using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>Ears, walls, screens and noises of the survey are where they can be.</summary>
internal static class SoundRules
{
    // A head does not come closer to a wall than this [m].
    private const double LeastToWall = 0.05;

    /// <summary>Checks them.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        var survey = names.Job.Survey;
        foreach (var listener in survey.Listeners)
            Ear(listener, names, slips);
        foreach (var rack in survey.Racks)
            Rack(rack, names, slips);
        foreach (var noise in survey.Noises)
            Stands((noise.In, $"noise {noise.Id}", noise.At), [noise.Spot], (names, slips));
        foreach (var screen in survey.Screens)
            Stands((screen.In, $"screen {screen.Id}", screen.At), [screen.From, screen.To], (names, slips));
        var walls = new Dictionary<(string, string), string>();
        foreach (var wall in survey.Partitions)
            Wall(wall, walls, (names, slips));
    }

    private static void Ear(Listener listener, JobNames names, Slips slips)
    {
        if (listener.Spot is not { Value: var spot } || names.Spaces.GetValueOrDefault(listener.In)?.Size is not { Value: var size })
            return;
        var least = Math.Min(Math.Min(spot.X, size.Length - spot.X), Math.Min(Math.Min(spot.Y, size.Width - spot.Y), Math.Min(spot.Z, size.Height - spot.Z)));
        // What lies outside altogether is found with the other spots.
        if (least is < 0 or >= LeastToWall)
            return;
        var said = new Said(
            $"the ear of listener {listener.Id} is {QuantityText.Show(least)} m from a wall, the floor or the ceiling of {listener.In}",
            $"a head is at least {QuantityText.Show(LeastToWall)} m away from all of them",
            "Write where the head is, length x width x height from the corner, such as 2 x 1.4 x 1.2 m.");
        slips.Add(RuleCodes.EarInWall, listener.Spot.At, said);
    }

    private static void Rack(Rack rack, JobNames names, Slips slips)
    {
        if (rack.Cabinet is { } cabinet && !names.Catalogue.Cabinets.ContainsKey(cabinet))
            slips.Unknown(RuleCodes.UnknownCabinet, rack.At, new("cabinet model", cabinet, $"rack {rack.Id}", "of the catalogue"), [.. names.Catalogue.Cabinets.Keys]);
        if (names.Spaces.TryGetValue(rack.In, out var space))
            SpaceRules.Inside(rack.Spot, space, $"rack {rack.Id}", slips);
    }

    private static void Stands((string In, string Who, Place At) what, Given<Spot>?[] spots, (JobNames Names, Slips Slips) to)
    {
        if (!to.Names.Spaces.TryGetValue(what.In, out var space))
        {
            to.Slips.Unknown(RuleCodes.UnknownSpace, what.At, new("space", what.In, what.Who), to.Names.Spaces.Keys);
            return;
        }

        foreach (var spot in spots)
            SpaceRules.Inside(spot, space, what.Who, to.Slips);
    }

    private static void Wall(Partition wall, Dictionary<(string, string), string> walls, (JobNames Names, Slips Slips) to)
    {
        foreach (var side in wall.Between.Where(side => !to.Names.Spaces.ContainsKey(side)))
            to.Slips.Unknown(RuleCodes.UnknownSpace, wall.At, new("space", side, $"partition {wall.Id}"), to.Names.Spaces.Keys);
        var (one, other) = string.CompareOrdinal(wall.Between[0], wall.Between[1]) <= 0 ? (wall.Between[0], wall.Between[1]) : (wall.Between[1], wall.Between[0]);
        if (one == other)
            Between($"partition {wall.Id} lies between {one} and itself", wall.At, to.Slips);
        else if (!walls.TryAdd((one, other), wall.Id))
            Between($"partition {wall.Id} lies between {one} and {other}, and so does {walls[(one, other)]}", wall.At, to.Slips);
        var holes = (wall.Door?.Value.Value ?? 0) + (wall.Gap?.Value.Value ?? 0);
        if (wall.Area is not { } area || holes <= area.Value.Value)
            return;
        var said = new Said(
            $"door and gap of partition {wall.Id} are {QuantityText.Show(holes)} m² together",
            $"the whole wall is {area.Written}, door and gap included",
            "Correct the areas.");
        to.Slips.Add(RuleCodes.DoorBeyondWall, area.At, said);
    }

    private static void Between(string given, Place at, Slips slips) => slips.Add(
        RuleCodes.WallBetween, at, new(given, "one wall lies between two different spaces, door and gap written in it", "Correct a side, or write one wall for both."));
}

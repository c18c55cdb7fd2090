using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Engineering.Acoustics;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>What is said in words beside the plan of a room: the map, the limits, and what the survey does not place.</summary>
internal static class RoomNotes
{
    private const int MostNames = 8;

    /// <summary>The notes.</summary>
    public static IEnumerable<string> Of(PaperInput input, Space space, SoundGrid? grid)
    {
        yield return Map(space, grid, input.Units);
        foreach (var listener in input.Results.Sound.Listeners.Where(one => one.Listener.In == space.Id))
        {
            if (listener.Limit is { } limit)
                yield return $"At {listener.Listener.Id} at most {Numbers.Show(limit, "dB(A)")} may be heard.";
            if (listener.Listener.Spot is null)
                yield return $"Where {listener.Listener.Id} is in the room is not surveyed.";
            if (listener.Questions.Count > 0)
                yield return "To be found out: " + string.Join("; ", listener.Questions);
        }

        foreach (var partition in input.Job.Survey.Partitions)
        {
            if (partition.Beyond(space.Id) is { } beyond)
                yield return $"{partition.Id} to {beyond}{(partition.Area is { } area ? ", " + Dimension.OfArea(area.Value.Value, input.Units) : "")}{(partition.Door is { } door ? $", with a door of {Dimension.OfArea(door.Value.Value, input.Units)}" : "")}: on which side it is the survey does not say.";
        }

        var racks = input.Job.Survey.Racks.Where(rack => rack.In == space.Id && rack.Spot is null).Select(rack => rack.Id).ToList();
        if (racks.Count > 0)
            yield return $"Not placed in the survey: rack {string.Join(", ", racks)}.";
        var drops = input.Job.Survey.Drops.Where(drop => drop.To == space.Id).ToList();
        if (drops.Count > 0)
            yield return Drops(drops);
        yield return "Walls are not drawn to their thickness.";
    }

    private static string Map(Space space, SoundGrid? grid, ShownUnits units)
    {
        if (grid is null)
            return "No sound map: nothing that is heard here is known.";
        var at = $"{Dimension.OfRoom(Math.Round(grid.Height, 2), units)} above the floor";
        var with = space.Background is null ? "equipment alone, for the background is not measured" : "equipment and background together";
        var levels = Contours.Levels(grid);
        return levels.Count > 0
            ? $"Dashed: lines of the same level in dB(A) {at}, {with}, in the loudest ordinary case."
            : $"No lines: {at} it is {Numbers.Show(Math.Round(grid.Levels.Max(), 1), "dB(A)")} nearly everywhere, {with}.";
    }

    private static string Drops(List<Drop> drops)
    {
        var ways = drops.SelectMany(drop => drop.Pieces).Select(piece => piece.By).OfType<string>().Distinct().ToList();
        var names = string.Join(", ", drops.Take(MostNames).Select(drop => drop.Id)) + (drops.Count > MostNames ? $" and {drops.Count - MostNames} more" : "");
        return $"Drops that end here: {names}{(ways.Count > 0 ? $", by way of {string.Join(", ", ways)}" : "")}. Where in the room they end is not surveyed.";
    }
}

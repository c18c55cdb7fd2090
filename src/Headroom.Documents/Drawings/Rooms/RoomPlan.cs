using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Acoustics;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>The plan of a room to scale with its sound map: walls, what stands in it, who listens, lines of the same level.</summary>
public static class RoomPlan
{
    // Ears of people who sit.
    private const double EarHeight = 1.2;
    private const double SheetWidth = 515;
    private const double MeshMetres = 0.1;
    private const int MostMesh = 160;

    /// <summary>The rooms of a job of which the size is known and in which something is heard or stands.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<string> Rooms(PaperInput input)
    {
        var survey = input.Job.Survey;
        return [.. survey.Spaces.Where(space => space.Size is not null && (
            survey.Listeners.Any(listener => listener.In == space.Id) || survey.Racks.Any(rack => rack.In == space.Id && rack.Spot is not null)
            || input.Results.Sound.Sources.Any(source => source.Space == space.Id && source.Spot is not null))).Select(space => space.Id)];
    }

    /// <summary>The mesh from which the map of a room is drawn.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="space">The room; its size is known.</param>
    /// <returns>The mesh; null when nothing that is heard there is known.</returns>
    public static SoundGrid? Grid(PaperInput input, Space space)
    {
        var size = space.Size!.Value;
        var height = input.Job.Survey.Listeners.FirstOrDefault(listener => listener.In == space.Id && listener.Spot is not null)?.Spot?.Value.Z ?? EarHeight;
        return SoundGrids.Of(input.Results.Sound, space.Id, (Mesh(size.Length), Mesh(size.Width)), height);
    }

    /// <summary>Draws a room.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The room.</param>
    /// <returns>The drawing; null when there is no such room or its size is not known.</returns>
    public static Picture? Of(PaperInput input, string id)
    {
        if (Begin(input, id) is not { } begun)
            return null;
        Notes(begun.Plate, begun.Frame, begun.Notes);
        return begun.Plate.Finish(begun.Title);
    }

    /// <summary>Draws a room by itself, with what is said about it apart, so that things can be moved on it.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The room.</param>
    /// <returns>The drawing with its scale; null when there is no such room or its size is not known.</returns>
    public static RoomSheet? Sheet(PaperInput input, string id) => Begin(input, id) is { } begun
        ? new(begun.Plate.Finish(begun.Title, RoomFrame.Wall), begun.Notes, begun.Frame.Inside, begun.Frame.Scale.Points(1))
        : null;

    private static (Plate Plate, RoomFrame Frame, IReadOnlyList<string> Notes, string Title)? Begin(PaperInput input, string id)
    {
        if (input.Job.Survey.Spaces.FirstOrDefault(one => one.Id == id) is not { Size: { } size } space)
            return null;
        var plate = new Plate();
        var frame = RoomFrame.Of(size.Value, input.Units.IsImperial);
        var grid = Grid(input, space);
        plate.Text(plate.Fit($"{space.Id}{(space.Kind is { } kind && kind != space.Id ? $", {kind}" : "")}", Marks.Title, SheetWidth), new(0.5, 9), Marks.Title);
        RoomWalls.Draw(plate, input.Job, space, frame);
        var things = new RoomThings(plate, input, space, frame);
        things.Shapes();
        if (grid is not null)
            SoundMap.Draw(plate, grid, frame);
        things.Labels();
        Marks.Across(plate, new(frame.Inside.X, frame.Inside.Bottom + RoomFrame.Wall + 7), frame.Inside.Width, Dimension.OfRoom(size.Value.Length, input.Units));
        Marks.Down(plate, new(frame.Inside.X - RoomFrame.Wall - 10, frame.Inside.Y), frame.Inside.Height, Dimension.OfRoom(size.Value.Width, input.Units));
        Marks.ScaleBar(plate, new(frame.Inside.X, frame.Inside.Bottom + RoomFrame.Wall + 24), frame.Scale);
        return (plate, frame, [.. RoomNotes.Of(input, space, grid), .. things.Unlabelled], $"Plan of {id} to scale{(grid is null ? "" : ", with lines of the same sound level")}");
    }

    private static void Notes(Plate plate, RoomFrame frame, IReadOnlyList<string> lines)
    {
        var x = frame.Inside.Right + RoomFrame.Wall + 26;
        if (SheetWidth - x >= 130)
            Marks.Notes(plate, new(x, frame.Inside.Y + 6), SheetWidth - x, lines);
        else
            Marks.Notes(plate, new(frame.Inside.X, plate.Bottom + 14), SheetWidth - frame.Inside.X, lines);
    }

    private static int Mesh(double metres) => Math.Clamp((int)Math.Round(metres / MeshMetres), 2, MostMesh);
}

using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Domain.Jobs;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>The walls of a room, and the rooms beside it as far as the survey says where they lie.</summary>
internal static class RoomWalls
{
    // How far corners as people measure them may lie apart and still belong to one wall.
    private const double WallMetres = 0.4;
    private const double Shown = 16;

    /// <summary>Draws the walls.</summary>
    public static void Draw(Plate plate, Job job, Space space, RoomFrame frame)
    {
        var (inside, wall) = (frame.Inside, RoomFrame.Wall);
        if (space.Kind == "outdoors")
        {
            plate.Rect(inside, new Look(new Stroke(Ink.Ink, 0.6, 4)));
            return;
        }

        var outside = inside.Inset(-wall);
        EntryBar.Hatch(plate, new Box(outside.X, outside.Y, outside.Width, wall));
        EntryBar.Hatch(plate, new Box(outside.X, inside.Bottom, outside.Width, wall));
        EntryBar.Hatch(plate, new Box(outside.X, inside.Y, wall, inside.Height));
        EntryBar.Hatch(plate, new Box(inside.Right, inside.Y, wall, inside.Height));
        plate.Rect(inside, new Look(new Stroke(Ink.Ink, 1)));
        foreach (var other in job.Survey.Spaces)
        {
            if (other.Id != space.Id && other.Floor == space.Floor && space.Corner is { } corner && other is { Corner: { } theirs, Size: { } size })
            {
                var (x, y) = (theirs.Value.X - corner.Value.X, theirs.Value.Y - corner.Value.Y);
                Beside(plate, frame, other.Id, new Box(x, y, size.Value.Length, size.Value.Width));
            }
        }
    }

    // Of a room beside only the strip along the common wall; in metres from the room's corner.
    private static void Beside(Plate plate, RoomFrame frame, string name, Box metres)
    {
        var (from, to) = (Math.Max(0, metres.X), Math.Min(frame.Size.Length, metres.Right));
        var above = Math.Abs(metres.Y - frame.Size.Width) < WallMetres;
        if (to <= from || (!above && Math.Abs(metres.Bottom) >= WallMetres))
            return;
        var (left, right) = (frame.At(from, 0).X, frame.At(to, 0).X);
        var y = above ? frame.Inside.Y - RoomFrame.Wall : frame.Inside.Bottom + RoomFrame.Wall;
        var end = above ? y - Shown : y + 4;
        plate.Poly([new(left, y), new(left, end), new(right, end), new(right, y)], closed: false, new Look(new Stroke(Ink.Ink, 0.5, 2.5)));
        if (above)
            plate.TryText(name, new((left + right) / 2, y - 5), Marks.Soft with { Anchor = Anchor.Middle });
    }
}

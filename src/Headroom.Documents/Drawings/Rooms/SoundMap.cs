using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Domain.Shown;
using Headroom.Engineering.Acoustics;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>Lines of the same level in a room, each with its value in the line.</summary>
internal static class SoundMap
{
    private const double ShortestWritten = 40;

    private static readonly Look Dashed = new(new Stroke(Ink.Ink, 0.5, 3));

    /// <summary>Draws the lines.</summary>
    public static void Draw(Plate plate, SoundGrid grid, RoomFrame frame)
    {
        foreach (var level in Contours.Levels(grid))
        {
            foreach (var contour in Contours.Of(grid, level))
                Line(plate, frame, contour);
        }
    }

    private static void Line(Plate plate, RoomFrame frame, Contour contour)
    {
        var spots = contour.X.Select((x, i) => frame.At(x, contour.Y[i])).ToList();
        plate.Poly(spots, closed: false, Dashed);
        if (Length(spots) < ShortestWritten)
            return;
        var text = Numbers.Show(contour.Level);
        var lettering = Marks.Small with { Anchor = Anchor.Middle };
        // From the middle outwards, until the value stands over nothing else and inside the room.
        for (var off = 0; off < spots.Count / 2; off++)
        {
            foreach (var at in new[] { spots[spots.Count / 2 + off].By(0, 2.3), spots[spots.Count / 2 - off].By(0, 2.3) })
            {
                var box = TextBoxes.Of(text, at, lettering).Inset(-1);
                if (!plate.IsFree(box) || !frame.Inside.Holds(box))
                    continue;
                plate.Rect(box, Look.Solid(Ink.Paper));
                plate.Text(text, at, lettering);
                return;
            }
        }
    }

    private static double Length(List<Spot> spots)
    {
        var length = 0.0;
        for (var i = 1; i < spots.Count; i++)
            length += Math.Sqrt(Math.Pow(spots[i].X - spots[i - 1].X, 2) + Math.Pow(spots[i].Y - spots[i - 1].Y, 2));
        return length;
    }
}

using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>Finds a place for the label of a mark: beside it, else further off with a leader line.</summary>
internal static class LabelPlacer
{
    private const double Gap = 5;
    private const double LongestLeader = 90;

    // Right, left, above, below, and the corners between them.
    private static readonly (double Right, double Down)[] Ways = [(1, 0), (-1, 0), (0, -1), (0, 1), (0.7, -0.7), (0.7, 0.7), (-0.7, -0.7), (-0.7, 0.7)];

    /// <summary>Writes the label of a mark.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="text">The label.</param>
    /// <param name="mark">The middle of the mark.</param>
    /// <param name="lettering">How it is written, from its start.</param>
    /// <param name="within">Where it must stay.</param>
    /// <returns>False when there is no place for it within reach; then nothing is written.</returns>
    public static bool Label(Plate plate, string text, Spot mark, Lettering lettering, Box within)
    {
        for (var off = Gap; off <= LongestLeader; off += off < 12 ? 3 : 9)
        {
            foreach (var (right, down) in Ways)
            {
                var at = Place(text, mark.By(right * off, down * off), lettering, right);
                var box = TextBoxes.Of(text, at, lettering).Inset(-1);
                if (!within.Holds(box) || !plate.IsFree(box))
                    continue;
                if (off > 2 * Gap)
                    plate.Line(mark, Nearest(box, mark), new Stroke(Ink.Soft, 0.4));
                plate.Rect(box, Look.Solid(Ink.Paper));
                plate.Text(text, at, lettering);
                return true;
            }
        }

        return false;
    }

    private static Spot Place(string text, Spot spot, Lettering lettering, double right)
    {
        var width = Typeface.Width(text, lettering);
        return spot.By(right > 0 ? 0 : right < 0 ? -width : -width / 2, lettering.Size * 0.3);
    }

    private static Spot Nearest(Box box, Spot mark) => new(Math.Clamp(mark.X, box.X, box.Right), Math.Clamp(mark.Y, box.Y, box.Bottom));
}

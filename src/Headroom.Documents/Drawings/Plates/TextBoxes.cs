using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>The room that texts take, so that none is written over another.</summary>
public static class TextBoxes
{
    // Of the size of the letters: what stands above the baseline, and what hangs below it.
    private const double Above = 0.74;
    private const double Below = 0.22;

    /// <summary>The room a text takes.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Its place on the baseline.</param>
    /// <param name="lettering">How it is written; turned by nothing or by a quarter.</param>
    public static Box Of(string text, Spot at, Lettering lettering)
    {
        var width = Typeface.Width(text, lettering);
        var left = -width * Share(lettering.Anchor);
        var (above, below) = (lettering.Size * Above, lettering.Size * Below);
        return lettering.Turned switch
        {
            > 45 => new Box(at.X - below, at.Y + left, above + below, width),
            < -45 => new Box(at.X - above, at.Y - left - width, above + below, width),
            _ => new Box(at.X + left, at.Y - above, width, above + below),
        };
    }

    /// <summary>The text, cut at its end where it is too long.</summary>
    /// <param name="text">The text.</param>
    /// <param name="lettering">How it is written.</param>
    /// <param name="width">The room there is [pt].</param>
    /// <returns>The text, or as much of it as has room with an ellipsis; empty when there is room for nothing.</returns>
    public static string Fit(string text, Lettering lettering, double width)
    {
        if (Typeface.Width(text, lettering) <= width)
            return text;
        for (var length = text.Length - 1; length > 0; length--)
        {
            var cut = text[..length].TrimEnd() + "…";
            if (Typeface.Width(cut, lettering) <= width)
                return cut;
        }

        return "";
    }

    private static double Share(Anchor anchor) => anchor switch { Anchor.Middle => 0.5, Anchor.End => 1, _ => 0 };
}

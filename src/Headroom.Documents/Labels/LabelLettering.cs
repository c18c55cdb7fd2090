using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Labels;

/// <summary>A text as large as fits: it shrinks to 7 pt on one line, is then broken into lines, and shrinks to 5 pt. It is never cut.</summary>
/// <param name="Lettering">How it is written.</param>
/// <param name="Lines">Its lines.</param>
internal sealed record LabelLettering(Lettering Lettering, IReadOnlyList<string> Lines)
{
    // Common practice, no source: what can be read at arm's length, and what can be read at all.
    private const double ArmsLength = 7;
    private const double Smallest = 5;
    private const double Step = 0.5;
    private const double LeadShare = 1.16;

    /// <summary>Its height [pt].</summary>
    public double Height => Lines.Count * Lettering.Size * LeadShare;

    /// <summary>The width of its longest line [pt].</summary>
    public double Width => Lines.Max(line => Typeface.Width(line, Lettering));

    /// <summary>The text in a room; null when it does not fit even at its smallest.</summary>
    public static LabelLettering? Fit(string text, Face face, (double Width, double Height) room, double most)
    {
        for (var size = most; size >= Math.Min(most, ArmsLength); size -= Step)
        {
            var one = new LabelLettering(new(face, size, Ink.Black), [text]);
            if (one.Width <= room.Width && one.Height <= room.Height)
                return one;
        }

        return Broken(text, face, room, most);
    }

    /// <summary>A smaller line in a room: its words stay whole as long as they do at 5 pt; null when it does not fit even then.</summary>
    public static LabelLettering? FitWords(string text, (double Width, double Height) room, double most)
    {
        for (var size = most; size >= Smallest; size -= Step)
        {
            var lettering = new Lettering(Face.Plain, size, Ink.Black);
            if (TextWrap.LongestWord(text, lettering) <= room.Width && new LabelLettering(lettering, TextWrap.Lines(text, lettering, room.Width)) is var whole && whole.Height <= room.Height)
                return whole;
        }

        return Broken(text, Face.Plain, room, most);
    }

    private static LabelLettering? Broken(string text, Face face, (double Width, double Height) room, double most)
    {
        for (var size = most; size >= Smallest; size -= Step)
        {
            var lettering = new Lettering(face, size, Ink.Black);
            var broken = new LabelLettering(lettering, TextWrap.Lines(text, lettering, room.Width));
            if (broken.Height <= room.Height && broken.Width <= room.Width + 0.02)
                return broken;
        }

        return null;
    }

    /// <summary>The text at its place.</summary>
    /// <param name="at">Its upper left corner.</param>
    public IEnumerable<Placed> At(Spot at) => Lines.Select((line, i) =>
    {
        var top = at.Y + i * Lettering.Size * LeadShare;
        return new Placed(new(at.X, top, Typeface.Width(line, Lettering), Lettering.Size * LeadShare), line, canvas => canvas.Text(line, new(at.X, top + Lettering.Size * 0.9), Lettering));
    });
}

using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;

namespace Headroom.Documents.Labels;

/// <summary>The words of a label in a room: the name, and below it as many of the smaller lines as there is room for.</summary>
internal sealed class LabelBlock
{
    private const double MostOnSheet = 18;
    private const double AlsoShare = 0.62;
    private const double LeastAlso = 5;

    private readonly List<LabelLettering> _parts = [];

    private LabelBlock(LabelLettering name) => _parts.Add(name);

    /// <summary>Its height [pt].</summary>
    public double Height => _parts.Sum(part => part.Height);

    /// <summary>Its width [pt].</summary>
    public double Width => _parts.Max(part => part.Width);

    /// <summary>The words in a room; null when the name does not fit.</summary>
    public static LabelBlock? Fit(LabelText text, (double Width, double Height) room)
    {
        // With room kept for the smaller lines first; a name that is too long takes it all.
        var kept = Math.Min(0.45 * room.Height, text.Also.Count * LeastAlso * 1.4);
        var name = LabelLettering.Fit(text.Id, Face.Strong, (room.Width, room.Height - kept), MostOnSheet) ?? LabelLettering.Fit(text.Id, Face.Strong, room, MostOnSheet);
        if (name is null)
            return null;
        var block = new LabelBlock(name);
        foreach (var line in text.Also)
        {
            var most = Math.Clamp(name.Lettering.Size * AlsoShare, LeastAlso, 9);
            if (LabelLettering.FitWords(line, (room.Width, room.Height - block.Height), most) is { } also)
                block._parts.Add(also);
        }

        return block;
    }

    /// <summary>The words in the middle of a room, from its left edge.</summary>
    public IEnumerable<Placed> In(Box room)
    {
        var y = room.Y + (room.Height - Height) / 2;
        foreach (var part in _parts)
        {
            foreach (var placed in part.At(new(room.X, y)))
                yield return placed;
            y += part.Height;
        }
    }
}

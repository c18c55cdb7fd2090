using Headroom.Documents.Canvas;

namespace Headroom.Documents.Letters;

/// <summary>The letters of a face: widths, and what stands in for a character that the face does not have.</summary>
public sealed class Typeface
{
    private static readonly Lazy<Typeface>[] All = [.. Enum.GetValues<Face>().Select(face => new Lazy<Typeface>(() => new(face)))];

    private readonly FontFile _file;
    private readonly double[] _widths = new double[0x3000];

    private Typeface(Face face)
    {
        Name = Enum.GetName(face)!.ToLowerInvariant();
        using var stream = typeof(Typeface).Assembly.GetManifestResourceStream(Name)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        _file = new FontFile(bytes.ToArray());
    }

    /// <summary>The name under which the font is embedded.</summary>
    internal string Name { get; }

    /// <summary>The font file.</summary>
    internal byte[] Bytes => _file.Bytes;

    /// <summary>The letters of a face.</summary>
    /// <param name="face">The face.</param>
    public static Typeface Of(Face face) => All[(int)face].Value;

    /// <summary>How wide a text is.</summary>
    /// <param name="text">The text, on one line.</param>
    /// <param name="lettering">How it is written.</param>
    /// <returns>The width [pt].</returns>
    public static double Width(string text, Lettering lettering)
    {
        var width = 0.0;
        foreach (var (face, run) in Runs(text, lettering.Face))
        {
            var letters = Of(face);
            foreach (var character in run)
                width += letters.Advance(character);
        }

        return width * lettering.Size;
    }

    /// <summary>The text in pieces that one face each can write: what a face lacks is taken from the plain one.</summary>
    /// <param name="text">The text, on one line.</param>
    /// <param name="face">The face wanted.</param>
    public static IEnumerable<(Face Face, string Text)> Runs(string text, Face face)
    {
        var wanted = Of(face);
        if (face == Face.Plain || text.All(wanted.Has))
        {
            yield return (face, wanted.Written(text));
            yield break;
        }

        var plain = Of(Face.Plain);
        bool Borrowed(int at) => !wanted.Has(text[at]) && plain.Has(text[at]);
        for (var from = 0; from < text.Length;)
        {
            var to = from + 1;
            while (to < text.Length && Borrowed(to) == Borrowed(from))
                to++;
            yield return Borrowed(from) ? (Face.Plain, text[from..to]) : (face, wanted.Written(text[from..to]));
            from = to;
        }
    }

    /// <summary>The text as the face can write it: what it lacks is told by its code, such as <c>U+6F22</c>, so that nothing is lost unseen.</summary>
    /// <param name="text">The text.</param>
    public string Written(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!Has(text[i]))
                return WithStandIns(text);
        }

        return text;
    }

    /// <summary>Signs of a text that are told by their codes, because no face of ours has them.</summary>
    /// <param name="text">The text.</param>
    public static IEnumerable<System.Text.Rune> Lacking(string text)
    {
        var plain = Of(Face.Plain);
        if (plain.Written(text) == text)
            yield break;
        foreach (var rune in text.EnumerateRunes())
        {
            if (plain.Written(rune.ToString()).StartsWith("[U+", StringComparison.Ordinal))
                yield return rune;
        }
    }

    private string WithStandIns(string text)
    {
        var written = new System.Text.StringBuilder(text.Length + 8);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsBmp && Has((char)rune.Value))
                written.Append((char)rune.Value);
            else if (StandIn(rune) is { } other)
                written.Append(other);
            else if (System.Text.Rune.GetUnicodeCategory(rune) is not (System.Globalization.UnicodeCategory.Format or System.Globalization.UnicodeCategory.Control))
                written.Append(System.Globalization.CultureInfo.InvariantCulture, $"[U+{rune.Value:X4}]");
        }

        return written.ToString();
    }

    // Signs that mean the same and that one of our fonts has where another has not.
    private string? StandIn(System.Text.Rune rune) => rune.Value switch
    {
        0x03A9 when Has('\u2126') => "\u2126",
        0x2126 when Has('\u03A9') => "\u03A9",
        0x03A9 or 0x2126 => "Ohm",
        0x03BC when Has('\u00B5') => "\u00B5",
        0x2009 or 0x202F or 0x2007 or '\t' => " ",
        0x2011 => "-",
        _ => null,
    };

    private bool Has(char character) => Advance(character) >= 0;

    // Below zero: not there. Zero: not looked up yet.
    private double Advance(char character)
    {
        if (character >= _widths.Length)
            return _file.Advance(character) ?? -1;
        if (_widths[character] == 0)
            _widths[character] = _file.Advance(character) ?? -1;
        return _widths[character];
    }
}

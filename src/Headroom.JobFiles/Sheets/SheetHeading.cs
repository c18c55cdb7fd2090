using System.Text;

namespace Headroom.JobFiles.Sheets;

/// <summary>A heading as it is compared with known words, and the unit that stands in it.</summary>
/// <param name="Plain">The words in small letters, with single spaces.</param>
/// <param name="Unit">What stands in brackets behind them; null when nothing does.</param>
internal sealed record SheetHeading(string Plain, string? Unit)
{
    /// <summary>Reads a heading: <c>Length (ft)</c>, <c>cable_length [m]</c>.</summary>
    public static SheetHeading Of(string text)
    {
        var end = text.TrimEnd();
        var (open, close) = end.EndsWith(']') ? ('[', ']') : ('(', ')');
        var bracket = end.EndsWith(close) ? end.LastIndexOf(open) : -1;
        return bracket < 0
            ? new(PlainOf(end), null)
            : new(PlainOf(end[..bracket]), end[(bracket + 1)..^1].Trim() is { Length: > 0 } unit ? unit : null);
    }

    /// <summary>A heading whose words stay as they are, with the unit that stands in brackets behind them.</summary>
    public static (string Words, string? Unit) Written(string text)
    {
        var open = text.EndsWith(')') ? text.LastIndexOf('(') : -1;
        return open < 0 ? (text.Trim(), null) : (text[..open].Trim(), text[(open + 1)..^1].Trim());
    }

    /// <summary>The words as they are compared.</summary>
    public static string PlainOf(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var character in text.Normalize(NormalizationForm.FormC))
        {
            var one = char.IsWhiteSpace(character) || character == '_' ? ' ' : char.ToLowerInvariant(character);
            if (one != ' ' || (plain.Length > 0 && plain[^1] != ' '))
                plain.Append(one);
        }

        return plain.ToString().Trim(' ', ':', '*');
    }

    /// <summary>Says whether a field is meant, and with which unit: its name, one of its words, or either with a unit behind it.</summary>
    public (bool Fits, string? Unit) Fit(SheetField field)
    {
        var space = Plain.LastIndexOf(' ');
        // "Watts" says what it is and in which unit, and so does "service hours".
        if (Has(field, Plain))
            return (true, Unit ?? (field.Units is { } own ? UnitWords.Find(Plain[(space + 1)..], own)?.Symbol : null));
        if (space <= 0 || Unit is not null || field.Units is not { } units || UnitWords.Find(Plain[(space + 1)..], units) is not { } found)
            return (false, null);
        var words = Plain[..space];
        return Has(field, words.EndsWith(" in", StringComparison.Ordinal) ? words[..^3] : words) ? (true, found.Symbol) : (false, null);
    }

    private static bool Has(SheetField field, string words) => PlainOf(field.Name) == words || field.Words.Contains(words);
}

using System.Globalization;

namespace Headroom.Engineering.Heat;

/// <summary>What the walls of a cupboard let through, read out of the words they are described in.</summary>
internal static class WallTable
{
    // Conductivity [W/(m·K)] and usual thickness [m], by a word: handbook order, from memory.
    private static readonly (string Word, double Conductivity, double Metres)[] Solids =
    [
        ("chipboard", 0.13, 0.018), ("board", 0.13, 0.018), ("plywood", 0.13, 0.018), ("wood", 0.13, 0.018), ("timber", 0.13, 0.018), ("mdf", 0.13, 0.018),
        ("glass", 1.0, 0.004), ("brick", 0.7, 0.11), ("block", 0.7, 0.1), ("concrete", 1.7, 0.1),
    ];

    // Plaster on both sides of studs: two boards and a still layer of air [m²·K/W], from memory.
    private const double PlasterConductivity = 0.25;
    private const double PlasterMetres = 0.0125;
    private const double StillAir = 0.18;

    /// <summary>The coefficient of walls described in words.</summary>
    /// <param name="words">As written, such as <c>16 mm board</c>.</param>
    /// <returns>The coefficient [W/(m²·K)] and what it was taken for; null when the words say nothing that is known.</returns>
    public static (double Coefficient, string How)? Of(string? words)
    {
        if (words is null)
            return null;
        var text = words.ToLowerInvariant();
        if (text.Contains("plasterboard", StringComparison.Ordinal) || text.Contains("drywall", StringComparison.Ordinal))
        {
            var metres = Thickness(text) ?? PlasterMetres;
            return (ClosedBox.Coefficient(2 * metres / PlasterConductivity + StillAir), "two plasterboards with still air between, 0.25 W/(m·K)");
        }

        if (text.Contains("steel", StringComparison.Ordinal) || text.Contains("metal", StringComparison.Ordinal) || text.Contains("sheet", StringComparison.Ordinal))
            return (ClosedBox.SheetSteel, "painted sheet steel, enclosure practice");
        foreach (var (word, conductivity, usual) in Solids)
        {
            if (text.Contains(word, StringComparison.Ordinal))
            {
                var metres = Thickness(text) ?? usual;
                return (ClosedBox.Coefficient(metres / conductivity), $"{Words.Of(1000 * metres)} mm of {word}, {Words.Of(conductivity)} W/(m·K)");
            }
        }

        return null;
    }

    // The number before "mm", "cm" or "in".
    private static double? Thickness(string text)
    {
        foreach (var (unit, metres) in (ReadOnlySpan<(string, double)>)[("mm", 0.001), ("cm", 0.01), ("in", 0.0254)])
        {
            var end = text.IndexOf(unit, StringComparison.Ordinal);
            var start = end;
            while (start > 0 && (char.IsAsciiDigit(text[start - 1]) || text[start - 1] is '.' or ' '))
                start--;
            if (end > start && double.TryParse(text.AsSpan(start, end - start).Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0)
                return number * metres;
        }

        return null;
    }
}

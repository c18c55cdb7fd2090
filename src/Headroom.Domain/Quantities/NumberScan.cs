using System.Globalization;

namespace Headroom.Domain.Quantities;

/// <summary>The parts of a written value: one or two numbers, a spread and a unit.</summary>
internal readonly record struct NumberScan(double First, double? Second, double? Spread, Unit Unit)
{
    /// <summary>Takes a text apart.</summary>
    public static NumberScan? Scan(ReadOnlySpan<char> text, UnitTable units, out QuantityProblem? problem)
    {
        problem = null;
        var rest = text;
        if (Number(ref rest, units, out problem) is not { } first)
            return null;
        rest = rest.TrimStart();
        double? second = null, spread = null;
        if (rest.StartsWith(".."))
        {
            rest = rest[2..].TrimStart();
            second = Number(ref rest, units, out problem);
            if (second is null)
                return null;
        }
        else if (rest.StartsWith("±") || rest.StartsWith("+-"))
        {
            rest = rest[(rest[0] == '±' ? 1 : 2)..].TrimStart();
            spread = Number(ref rest, units, out problem);
            if (spread is null)
                return null;
        }

        rest = rest.Trim();
        var unit = units.Find(rest);
        if (unit is null)
        {
            problem = NoUnit(text, rest, units);
            return null;
        }

        return new NumberScan(first, second, spread, unit);
    }

    private static double? Number(ref ReadOnlySpan<char> text, UnitTable units, out QuantityProblem? problem)
    {
        problem = null;
        var end = 0;
        if (end < text.Length && text[end] is '-' or '+' or '\u2212')
            end++;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || IsPoint(text, end)))
            end++;
        if (end < text.Length && text[end] == ',' && end > 0)
        {
            problem = new(QuantitySlip.Comma, $"{units.What} with a decimal point", "write the point for decimals (12.5) and no mark between thousands (1500)");
            return null;
        }

        var digits = text[..end].ToString().Replace('\u2212', '-');
        if (!double.TryParse(digits, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            problem = new(QuantitySlip.NotANumber, $"{units.What}: a number and {units.Symbols}", $"write it like {Example(units)}, or leave it out when it is not known");
            return null;
        }

        text = text[end..];
        return number;
    }

    // One point belongs to the number; two of them are the sign of a range.
    private static bool IsPoint(ReadOnlySpan<char> text, int at) =>
        text[at] == '.' && !(at + 1 < text.Length && text[at + 1] == '.') && !(at > 0 && text[at - 1] == '.');

    private static QuantityProblem NoUnit(ReadOnlySpan<char> text, ReadOnlySpan<char> unit, UnitTable units) => unit.IsEmpty
        ? new(QuantitySlip.UnitMissing, $"{units.What} in {units.Symbols}", $"write the unit behind it, like '{text.Trim().ToString()} {units.Shown.Symbol}'")
        : new(QuantitySlip.UnitUnknown, $"{units.What} in {units.Symbols}", Nearest(unit.ToString(), units));

    private static string Nearest(string unit, UnitTable units) =>
        Spelling.Nearest(unit, units.Units.SelectMany(u => u.Aliases.Prepend(u.Symbol))) is { } near
            ? $"did you mean '{near}'?"
            : $"write it like {Example(units)}";

    private static string Example(UnitTable units) => $"'12.5 {units.Shown.Symbol}'";
}

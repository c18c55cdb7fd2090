using System.Globalization;

namespace Headroom.Domain.Quantities;

/// <summary>The parts of a written value: one or two numbers, a spread and a unit.</summary>
internal readonly record struct NumberScan(double First, double? Second, double? Spread, Unit Unit)
{
    /// <summary>Takes a text apart.</summary>
    public static NumberScan? Scan(ReadOnlySpan<char> text, UnitTable units, out QuantityProblem? problem)
    {
        var rest = text;
        if (Number(ref rest, units, out problem) is not { } first)
            return null;
        double? second = null, spread = null;
        if (Take(ref rest, ".."))
            second = Number(ref rest, units, out problem);
        else if (Take(ref rest, "±") || Take(ref rest, "+-") || Take(ref rest, "+/-"))
            spread = Number(ref rest, units, out problem);
        if (problem is null && second < first)
            problem = Reversed(text, units);
        if (problem is not null)
            return null;
        rest = rest.Trim();
        if (units.Find(rest) is { } unit)
            return new NumberScan(first, second, spread, unit);
        problem = NoUnit(text, rest, units);
        return null;
    }

    private static bool Take(ref ReadOnlySpan<char> text, string mark)
    {
        var trimmed = text.TrimStart();
        if (!trimmed.StartsWith(mark))
            return false;
        text = trimmed[mark.Length..].TrimStart();
        return true;
    }

    private static double? Number(ref ReadOnlySpan<char> text, UnitTable units, out QuantityProblem? problem)
    {
        problem = null;
        var end = 0;
        if (end < text.Length && text[end] is '-' or '+' or '\u2212')
            end++;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || IsPoint(text, end)))
            end++;
        var digits = text[..end].ToString().Replace('\u2212', '-');
        if (!double.TryParse(digits, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            || !double.IsFinite(number))
        {
            problem = new(QuantitySlip.NotANumber, $"{units.What}: a number and {units.Symbols}", $"write it like {Example(units)}, or leave it out when it is not known");
            return null;
        }

        text = text[end..];
        if (!GoesOn(text))
            return number;
        problem = new(QuantitySlip.Comma, $"{units.What} with a point for decimals and no mark between thousands", "write 12.5 for twelve and a half, and 1500 for fifteen hundred");
        return null;
    }

    // One point belongs to the number; two of them are the sign of a range.
    private static bool IsPoint(ReadOnlySpan<char> text, int at) =>
        text[at] == '.' && !(at + 1 < text.Length && text[at + 1] == '.') && !(at > 0 && text[at - 1] == '.');

    // A digit behind a comma, an apostrophe or a space: the number was not over yet for whoever wrote it.
    private static bool GoesOn(ReadOnlySpan<char> text) =>
        text.Length > 0 && (text[0] == ',' || (text.Length > 1 && text[0] is '\'' or '\u2019' or ' ' or '\u00A0' or '\u202F' && char.IsAsciiDigit(text[1])));

    private static QuantityProblem Reversed(ReadOnlySpan<char> text, UnitTable units) =>
        new(QuantitySlip.Reversed, $"{units.What} with the smaller end first", $"turn the ends of '{text}' round");

    private static QuantityProblem NoUnit(ReadOnlySpan<char> text, ReadOnlySpan<char> unit, UnitTable units)
    {
        if (unit.IsEmpty)
            return new(QuantitySlip.UnitMissing, $"{units.What} in {units.Symbols}", $"write the unit behind it, like '{text.Trim()} {units.Shown.Symbol}'");
        var space = unit.IndexOf(' ');
        return space > 0 && units.Find(unit[..space]) is not null
            ? new(QuantitySlip.UnitUnknown, $"{units.What} and one word for where it comes from: {string.Join(", ", QuantityText.OriginWords)}", $"take '{unit[(space + 1)..].Trim()}' out or into a remark (# ...)")
            : new(QuantitySlip.UnitUnknown, $"{units.What} in {units.Symbols}", Nearest(unit.ToString(), units));
    }

    private static string Nearest(string unit, UnitTable units) =>
        Spelling.Nearest(unit, units.Units.SelectMany(u => u.Aliases.Prepend(u.Symbol)).Where(name => name.Length > 0)) is { } near
            ? $"did you mean '{near}'?"
            : $"write it like {Example(units)}";

    private static string Example(UnitTable units) => $"'12.5 {units.Shown.Symbol}'";
}

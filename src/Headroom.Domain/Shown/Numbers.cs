using System.Globalization;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Shown;

/// <summary>The one place where a number becomes text on a sheet: four significant digits, in no language's own manner.</summary>
public static class Numbers
{
    private const int Digits = 4;
    private const int MostDecimals = 9;

    // Below this share of the greatest of its neighbours a number is the dust of a sum, not a figure.
    private const double Dust = 1e-8;

    // Smaller than this only an exponent tells anything.
    private const double Tiny = 1e-6;

    /// <summary>One number by itself.</summary>
    /// <param name="value">The number.</param>
    public static string Show(double value) => Math.Abs(value) is >= Tiny and < double.PositiveInfinity ? Together([value])[0] : NumberManner.Current.Written(QuantityText.Show(value));

    /// <summary>One number by itself with its unit, which may be none.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">Its unit; empty for none.</param>
    public static string Show(double value, string unit) => WithUnit(Show(value), unit);

    /// <summary>Half an interval with its unit: two digits, for nobody knows more of it.</summary>
    /// <param name="half">Half the interval, in the unit.</param>
    /// <param name="unit">The unit; empty for none.</param>
    public static string Spread(double half, string unit)
    {
        var decimals = half > 0 && double.IsFinite(half) ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(half)), 0, MostDecimals) : 0;
        return WithUnit("± " + Fixed(half, Trim([half], decimals)), unit);
    }

    /// <summary>A shown number with its unit: one port, but two ports.</summary>
    /// <param name="number">The number as shown.</param>
    /// <param name="unit">The unit; empty for none.</param>
    public static string WithUnit(string number, string unit)
    {
        var isNoun = unit.Length > 3 && unit[^1] == 's' && unit.All(char.IsAsciiLetterLower);
        return isNoun && number is "1" or "-1" ? $"{number} {unit[..^1]}" : $"{number} {unit}".Trim();
    }

    /// <summary>Numbers that are read together, such as asked, there is and left: all with the same decimals, and none shown as zero that is not.</summary>
    /// <param name="values">The numbers; null for one that is not known.</param>
    /// <returns>A text for each; empty for one that is not known.</returns>
    public static IReadOnlyList<string> Together(IReadOnlyList<double?> values)
    {
        var numbers = values.OfType<double>().Where(double.IsFinite).ToList();
        var greatest = numbers.Count == 0 ? 0 : numbers.Max(Math.Abs);
        if (greatest is > 0 and < Tiny)
            return [.. values.Select(value => value is { } number ? Show(number) : "")];
        var decimals = Trim(numbers, Decimals(numbers, greatest));
        return [.. values.Select(value => value is not { } number ? "" : !double.IsFinite(number) || IsLost(number, decimals, greatest) ? Show(number) : Fixed(number, decimals))];
    }

    // Smaller than any decimals show, and still no dust beside its neighbours: an exponent tells it.
    private static bool IsLost(double number, int decimals, double greatest) =>
        Math.Abs(number) > Dust * greatest && Math.Round(number, decimals) == 0;

    private static int Decimals(List<double> numbers, double greatest)
    {
        if (greatest == 0)
            return 0;
        var decimals = Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(greatest)), 0, MostDecimals);
        while (decimals < MostDecimals && numbers.Exists(number => Math.Abs(number) > Dust * greatest && Math.Round(number, decimals) == 0))
            decimals++;
        return decimals;
    }

    private static int Trim(List<double> numbers, int decimals)
    {
        while (decimals > 0 && numbers.TrueForAll(number => Fixed(number, decimals).EndsWith('0')))
            decimals--;
        return decimals;
    }

    private static string Fixed(double number, int decimals)
    {
        var text = number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return NumberManner.Current.Written(text[0] == '-' && text.AsSpan(1).TrimStart("0.").IsEmpty ? text[1..] : text);
    }
}

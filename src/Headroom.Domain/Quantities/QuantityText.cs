using System.Globalization;
using Headroom.Domain.Findings;

namespace Headroom.Domain.Quantities;

/// <summary>Reads values as people write them: <c>90 m</c>, <c>24..33 °C</c>, <c>51 ± 2 dB(A)</c>, <c>6.4 W measured</c>.</summary>
public static class QuantityText
{
    /// <summary>The words that may stand behind a value and say where it comes from.</summary>
    public static IReadOnlyList<string> OriginWords { get; } = ["measured", "declared", "standard", "assumed", "invented"];

    /// <summary>Reads one value.</summary>
    /// <typeparam name="T">The quantity wanted.</typeparam>
    /// <param name="text">The text as written.</param>
    /// <param name="at">Where it stands.</param>
    /// <param name="problem">What is wrong with it, or null.</param>
    /// <returns>The value, or null with a problem.</returns>
    public static Given<T>? Read<T>(string text, Place at, out QuantityProblem? problem)
        where T : struct, IQuantity<T> =>
        Measure(text, T.Units, out problem) is { } found
            ? new Given<T>(T.Of(found.Value), text, found.Origin, found.PlusMinus, at)
            : null;

    /// <summary>Reads one value of a quantity that is known only while the program runs.</summary>
    /// <param name="text">The text as written.</param>
    /// <param name="units">The units in which it may be written.</param>
    /// <param name="problem">What is wrong with it, or null.</param>
    /// <returns>What the text says, or null with a problem.</returns>
    public static Measurement? Measure(string text, UnitTable units, out QuantityProblem? problem)
    {
        var rest = text.AsSpan().Trim();
        var origin = TakeOrigin(ref rest);
        if (NumberScan.Scan(rest, units, out problem) is not { } found)
            return null;
        var low = found.Unit.ToBase(found.First);
        if (found.Second is { } second)
        {
            var high = found.Unit.ToBase(second);
            return new Measurement((low + high) / 2, Math.Abs(high - low) / 2, found.Unit, origin, true);
        }

        double? spread = found.Spread is { } s ? Math.Abs(found.Unit.ToBase(found.First + s) - low) : null;
        return new Measurement(low, spread, found.Unit, origin, false);
    }

    /// <summary>Takes the word that says where a value comes from off the end of a text.</summary>
    /// <param name="text">The text; without the word and the space before it afterwards.</param>
    /// <returns>What the word says; <see cref="Origin.Unstated"/> when there is none.</returns>
    public static Origin TakeOrigin(ref ReadOnlySpan<char> text)
    {
        var space = text.LastIndexOf(' ');
        if (space < 0)
            return Origin.Unstated;
        Origin? origin = text[(space + 1)..] switch
        {
            "measured" => Origin.Measured,
            "declared" => Origin.Declared,
            "standard" => Origin.Standard,
            "assumed" => Origin.Assumed,
            "invented" => Origin.Invented,
            _ => null,
        };
        if (origin is null)
            return Origin.Unstated;
        text = text[..space].TrimEnd();
        return origin.Value;
    }

    /// <summary>Shows a number with the digits that matter and no more, invariant of the machine's language.</summary>
    /// <param name="value">The number.</param>
    /// <returns>At most four significant digits, no exponent between 0.001 and 1 000 000.</returns>
    public static string Show(double value)
    {
        if (double.IsNaN(value) || double.IsInfinity(value))
            return double.IsPositiveInfinity(value) ? "no limit" : "unknown";
        var size = Math.Abs(value);
        var format = size switch
        {
            0 => "0",
            >= 1000 => "0",
            >= 100 => "0.#",
            >= 10 => "0.##",
            >= 1 => "0.###",
            >= 0.001 => "0.#####",
            _ => "0.###e0",
        };
        return value.ToString(format, CultureInfo.InvariantCulture);
    }
}

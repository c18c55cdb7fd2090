using System.Runtime.CompilerServices;

namespace Headroom.Engineering;

/// <summary>Refusals at the public entries of the sums: name, value given, what is allowed, unit.</summary>
internal static class Require
{
    /// <summary>Refuses NaN, infinity and anything of 0 or less.</summary>
    internal static void Above0(double value, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!double.IsFinite(value) || value <= 0)
            throw Refusal(name, value, unit, "above 0");
    }

    /// <summary>Refuses NaN, infinity and anything below the least value.</summary>
    internal static void AtLeast(double least, double value, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!double.IsFinite(value) || value < least)
            throw Refusal(name, value, unit, FormattableString.Invariant($"{least} or more"));
    }

    /// <summary>Refuses NaN and anything that is not above 0 and at most 1.</summary>
    internal static void Share(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && value <= 1))
            throw Refusal(name, value, "as a share", "above 0 and at most 1");
    }

    /// <summary>Refuses a whole number outside its range.</summary>
    internal static void Between(int least, int most, int value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (value < least || value > most)
            throw new ArgumentOutOfRangeException(name, value,
                FormattableString.Invariant($"{name} is {value}; it must lie between {least} and {most}."));
    }

    private static ArgumentOutOfRangeException Refusal(string name, double value, string unit, string allowed) => new(
        name, value, FormattableString.Invariant($"{name} is {value} {unit}; it must be finite and {allowed}."));
}

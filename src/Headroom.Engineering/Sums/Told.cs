using System.Globalization;

namespace Headroom.Engineering.Sums;

/// <summary>A figure within a sentence, kept as a number until it is shown.</summary>
/// <param name="Value">The number in its unit [as the unit says].</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Told(double Value, string Unit)
{
    /// <summary>A level or a difference of levels, to the tenth of a decibel that can be meant.</summary>
    /// <param name="decibels">The level [dB].</param>
    /// <param name="unit">dB or dB(A).</param>
    /// <returns>The figure.</returns>
    /// <remarks>Source: none, it is rounded to be shown.</remarks>
    public static Told Level(double decibels, string unit = "dB") => new(Math.Round(decibels, 1, MidpointRounding.AwayFromZero), unit);

    /// <summary>The sentence with its figures shown.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="show">Shows a figure.</param>
    /// <returns>The text.</returns>
    public static string In(FormattableString sentence, Func<Told, string> show) => string.Format(
        CultureInfo.InvariantCulture, sentence.Format, Array.ConvertAll(sentence.GetArguments(), part => part is Told told ? show(told) : part));

    /// <inheritdoc/>
    public override string ToString() => Words.Of(Value, Unit);
}

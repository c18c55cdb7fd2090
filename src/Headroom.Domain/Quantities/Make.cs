using Headroom.Domain.Findings;

namespace Headroom.Domain.Quantities;

/// <summary>Makes values that no file holds, such as those of a proposal or a test.</summary>
public static class Make
{
    /// <summary>Makes a value with no place.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="origin">Where it comes from.</param>
    /// <returns>The value, written in the unit in which it is shown.</returns>
    public static Given<T> Given<T>(T value, Origin origin = Origin.Assumed)
        where T : struct, IQuantity<T> =>
        new(value, $"{QuantityText.Show(T.Units.Shown.FromBase(value.Value))} {T.Units.Shown.Symbol}", origin, null, Place.None);
}

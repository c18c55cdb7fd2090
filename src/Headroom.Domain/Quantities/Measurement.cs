namespace Headroom.Domain.Quantities;

/// <summary>What a written value says, before anything makes a quantity of it.</summary>
/// <param name="Value">The value in the base unit of its table; the middle where a range was written.</param>
/// <param name="PlusMinus">Half the interval, in the base unit; null when none was written.</param>
/// <param name="Unit">The unit in which it was written.</param>
/// <param name="Origin">Where it comes from, as far as the text says.</param>
/// <param name="IsRange">True when two ends were written, <c>24..33 °C</c>.</param>
public readonly record struct Measurement(double Value, double? PlusMinus, Unit Unit, Origin Origin, bool IsRange)
{
    /// <summary>The least it can be, in the base unit.</summary>
    public double Low => Value - (PlusMinus ?? 0);

    /// <summary>The most it can be, in the base unit.</summary>
    public double High => Value + (PlusMinus ?? 0);
}

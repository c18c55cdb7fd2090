namespace Headroom.Domain.Quantities;

/// <summary>A number that knows its unit. Each quantity is a type of its own, so that the wrong sum does not compile.</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>The number in the quantity's base unit, which the type's own page names.</summary>
    double Value { get; }

    /// <summary>The units in which people may write it; the first is the one in which it is shown.</summary>
    static abstract UnitTable Units { get; }

    /// <summary>Makes the quantity from a number in its base unit.</summary>
    /// <param name="value">The number, in the base unit.</param>
    /// <returns>The quantity.</returns>
    static abstract TSelf Of(double value);
}

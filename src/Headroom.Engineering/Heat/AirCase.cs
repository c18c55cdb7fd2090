using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Heat;

/// <summary>The air of a place in one named case. What is written of a cupboard and what is worked out for it: the higher counts.</summary>
/// <param name="Name">The case as people name it.</param>
/// <param name="Written">The temperature written of the place itself; null when none is.</param>
/// <param name="Around">The air around a cupboard [°C]; null when not known, or it is no cupboard.</param>
/// <param name="Rise">How much warmer its equipment makes it in an ordinary hour [K]; null when not known.</param>
/// <param name="MostRise">The same at its most [K]; null likewise.</param>
public sealed record AirCase(string Name, Given<Celsius>? Written, double? Around, double? Rise, double? MostRise)
{
    /// <summary>The written temperature, at the upper end of its interval [°C]; null when none is written.</summary>
    public double? WrittenCelsius => Written is { } given ? given.Value.Value + (given.PlusMinus ?? 0) : null;

    /// <summary>What is worked out for an ordinary hour [°C]; null when not known.</summary>
    public double? Worked => Around + Rise;

    /// <summary>The air in an ordinary hour [°C]; null when neither is known.</summary>
    public double? Celsius => Higher(WrittenCelsius, Worked);

    /// <summary>The air with all at its most [°C]: what is written was read in an ordinary hour.</summary>
    public double? MostCelsius => Higher(WrittenCelsius + Math.Max(0, (MostRise - Rise) ?? 0), Around + MostRise) ?? Celsius;

    /// <summary>Whether what is worked out counts, and not what is written.</summary>
    public bool WorkedCounts => Worked is { } worked && !(WrittenCelsius >= worked);

    private static double? Higher(double? one, double? other) => one is null ? other : other is null ? one : Math.Max(one.Value, other.Value);
}

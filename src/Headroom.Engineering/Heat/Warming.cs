namespace Headroom.Engineering.Heat;

/// <summary>How the air in a cupboard warms up in one case, from the air around it to where it settles.</summary>
/// <param name="Name">The case.</param>
/// <param name="Around">The air around it, and in it at the beginning [°C].</param>
/// <param name="Rise">How much warmer it grows in an ordinary hour [K]; above 0.</param>
/// <param name="Constant">The time constant [s]; above 0.</param>
public sealed record Warming(string Name, double Around, double Rise, double Constant)
{
    // Equipment of some 5 kg takes up 2500 J/K; the inner half of wooden walls some 7500 J/K for each square metre (estimate).
    private const double EquipmentJoules = 2500;
    private const double WallJoules = 7500;

    /// <summary>Where it settles [°C].</summary>
    public double Settled => Around + Rise;

    /// <summary>The air after a time.</summary>
    /// <param name="seconds">The time since it was closed or switched on [s]; 0 or more.</param>
    /// <returns>The temperature [°C].</returns>
    /// <remarks>Source: <see cref="Settling.Reached"/>.</remarks>
    public double CelsiusAt(double seconds) => Around + Rise * Settling.Reached(seconds, Constant);

    /// <summary>Heat that equipment and walls of a cupboard take up.</summary>
    /// <param name="place">The cupboard.</param>
    /// <returns>The heat [J/K].</returns>
    /// <remarks>Source: none, an estimate: 2500 J/K for equipment and 7500 J/K for each square metre of wall.</remarks>
    public static double JoulesPerKelvin(HeatPlace place) => EquipmentJoules + WallJoules * (place.Box?.SquareMetres ?? 0);

    /// <summary>The time constant of a cupboard at a rise.</summary>
    /// <param name="place">The cupboard.</param>
    /// <param name="rise">How much warmer it grows in an ordinary hour [K]; above 0.</param>
    /// <returns>The time constant [s]; null when the heat left in it is not known or nothing.</returns>
    /// <remarks>Source: <see cref="Settling.Seconds"/>.</remarks>
    public static double? ConstantOf(HeatPlace place, double rise) => place.Load.OrdinaryWatts is > 0 and var watts ? Settling.Seconds(JoulesPerKelvin(place), watts / rise) : null;

    /// <summary>The cases of a cupboard of which it is known how warm it grows, the warmest first.</summary>
    /// <param name="place">The cupboard.</param>
    /// <returns>The cases; empty when none is known.</returns>
    public static IReadOnlyList<Warming> Of(HeatPlace place)
    {
        var cases = new List<Warming>(place.Cases.Count);
        foreach (var one in place.Cases)
        {
            if (place.Box is not null && one is { Around: { } around, Rise: > 0 and var rise } && ConstantOf(place, rise) is { } constant)
                cases.Add(new(one.Name, around, rise, constant));
        }

        cases.Sort((left, right) => right.Settled.CompareTo(left.Settled));
        return cases;
    }
}

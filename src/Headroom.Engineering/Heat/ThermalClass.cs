namespace Headroom.Engineering.Heat;

/// <summary>A class of equipment by the air it bears at its inlet, and how it bears less in thin air.</summary>
/// <param name="Name">The class.</param>
/// <param name="Least">The coldest air allowed [°C].</param>
/// <param name="Most">The warmest air allowed [°C].</param>
/// <param name="MetresPerKelvin">Height above 900 m that takes a kelvin off [m].</param>
public sealed record ThermalClass(string Name, double Least, double Most, double MetresPerKelvin)
{
    /// <summary>Below this height nothing is taken off [m].</summary>
    public const double From = 900;

    /// <summary>The highest place the classes are made for [m].</summary>
    public const double Highest = 3050;

    /// <summary>The air recommended for all of them [°C].</summary>
    public static (double Least, double Most) Recommended => (18, 27);

    /// <summary>The classes.</summary>
    /// <remarks>Source: ASHRAE TC 9.9, 2021 reference card; what height takes off is from memory.</remarks>
    public static IReadOnlyList<ThermalClass> All { get; } =
        [new("A1", 15, 32, 300), new("A2", 10, 35, 300), new("A3", 5, 40, 175), new("A4", 5, 45, 125)];

    /// <summary>The warmest air at a height.</summary>
    /// <param name="celsius">The warmest air at sea level [°C].</param>
    /// <param name="metres">Height above the sea [m].</param>
    /// <param name="metresPerKelvin">Height above 900 m that takes a kelvin off [m]; above 0.</param>
    /// <returns>The warmest air there [°C].</returns>
    /// <remarks>Source: ASHRAE TC 9.9, notes of the same table, from memory: 1 K for each 300 m (A1, A2), 175 m (A3), 125 m (A4) above 900 m.</remarks>
    public static double At(double celsius, double metres, double metresPerKelvin)
    {
        Require.Above0(metresPerKelvin, "m");
        return celsius - Math.Max(0, metres - From) / metresPerKelvin;
    }
}

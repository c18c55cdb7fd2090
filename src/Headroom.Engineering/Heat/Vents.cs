namespace Headroom.Engineering.Heat;

/// <summary>Air that rises through two openings because it is warm.</summary>
public static class Vents
{
    /// <summary>Discharge of a sharp opening [1].</summary>
    public const double Discharge = 0.6;

    private const double Gravity = 9.80665;

    /// <summary>Two openings as one.</summary>
    /// <param name="low">Free area of the lower [m²]; above 0.</param>
    /// <param name="high">Free area of the upper [m²]; above 0.</param>
    /// <returns>The area that stands for both [m²].</returns>
    /// <remarks>Source: losses one behind the other: 1/A² = 1/A1² + 1/A2².</remarks>
    public static double Together(double low, double high)
    {
        Require.Above0(low, "m²");
        Require.Above0(high, "m²");
        return 1 / Math.Sqrt(1 / (low * low) + 1 / (high * high));
    }

    /// <summary>The flow through them.</summary>
    /// <param name="area">Both openings as one [m²]; 0 or more.</param>
    /// <param name="apart">Height between their middles [m]; 0 or more.</param>
    /// <param name="kelvins">How much warmer it is inside [K]; 0 or more.</param>
    /// <param name="outside">Air outside [°C].</param>
    /// <returns>The flow [m³/s].</returns>
    /// <remarks>Source: stack effect, Cd A √(2 g h ΔT / Ti), Cd 0.6 (ASHRAE form, seen in a question-and-answer page); made for buildings, worse with slots and filters.</remarks>
    public static double Flow(double area, double apart, double kelvins, double outside) =>
        Discharge * area * Math.Sqrt(2 * Gravity * apart * kelvins / (outside + kelvins + Air.Zero));

    /// <summary>How much warmer it is inside when all has settled.</summary>
    /// <param name="watts">Heat left inside [W]; 0 or more.</param>
    /// <param name="vents">The openings: both as one [m²], and the height between their middles [m].</param>
    /// <param name="wattsPerKelvin">What the faces let through [W/K]; 0 or more.</param>
    /// <param name="outside">Air outside [°C].</param>
    /// <param name="metres">Height above the sea [m]; null for the usual density of 1.2041 kg/m³.</param>
    /// <returns>The rise [K]; null when neither vents nor faces let anything through.</returns>
    /// <remarks>Source: balance of heat, P = ρ c V ΔT + U A ΔT, halved down; the rise settles because what leaves grows with it.</remarks>
    public static double? Rise(double watts, (double Area, double Apart) vents, double wattsPerKelvin, double outside, double? metres = null)
    {
        Require.AtLeast(0, watts, "W");
        Require.AtLeast(0, vents.Area, "m²");
        Require.AtLeast(0, vents.Apart, "m");
        Require.AtLeast(0, wattsPerKelvin, "W/K");
        if (watts == 0)
            return 0;
        if (vents.Area * vents.Apart == 0)
            return wattsPerKelvin > 0 ? watts / wattsPerKelvin : null;
        var carried = (metres is { } height ? Air.Density(outside, height) : Air.Usual) * Air.HeatPerKilogram;
        var (low, high) = (0.0, 1.0);
        while (Left(high) > 0 && high < 1e6)
            high *= 2;
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Left(middle) > 0 ? (middle, high) : (low, middle);
        }

        return high;

        double Left(double kelvins) => watts - (carried * Flow(vents.Area, vents.Apart, kelvins, outside) + wattsPerKelvin) * kelvins;
    }

    /// <summary>Free area of each of two equal openings that keep a rise.</summary>
    /// <param name="watts">Heat that the air has to carry [W]; 0 or more.</param>
    /// <param name="kelvins">The rise to be kept [K]; above 0.</param>
    /// <param name="apart">Height between their middles [m]; above 0.</param>
    /// <param name="outside">Air outside [°C].</param>
    /// <param name="density">Density of the air [kg/m³]; above 0.</param>
    /// <returns>The free area of each [m²]; louvres and mesh leave 0.4 to 0.6 of the hole.</returns>
    /// <remarks>Source: the same balance solved for the area; two equal openings count as one of 1/√2.</remarks>
    public static double AreaFor(double watts, double kelvins, double apart, double outside, double density = Air.Usual)
    {
        Require.Above0(kelvins, "K");
        Require.Above0(apart, "m");
        var flow = Air.FlowFor(watts, kelvins, density);
        return Math.Sqrt(2) * flow / Flow(1, apart, kelvins, outside);
    }
}

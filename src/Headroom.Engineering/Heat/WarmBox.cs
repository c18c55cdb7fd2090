namespace Headroom.Engineering.Heat;

/// <summary>A cupboard or cabinet as far as heat goes: what its faces and vents let through.</summary>
/// <param name="WattsPerKelvin">What its faces let through [W/K]; null when not known.</param>
/// <param name="SquareMetres">Area of the faces that give off heat [m²]; null likewise.</param>
/// <param name="Coefficient">What a square metre lets through [W/(m²·K)]; null likewise.</param>
/// <param name="How">How that came about, in words.</param>
public sealed record WarmBox(double? WattsPerKelvin, double? SquareMetres, double? Coefficient, string How)
{
    /// <summary>Both openings as one [m²]; 0 for none.</summary>
    public double VentArea { get; init; }

    /// <summary>Height between the middles of its vents [m].</summary>
    public double VentsApart { get; init; }

    /// <summary>What was assumed; empty when nothing.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>What is to be found out; null when nothing.</summary>
    public string? Question { get; init; }

    /// <summary>How much warmer it grows inside.</summary>
    /// <param name="watts">Heat left inside [W]; null when not known.</param>
    /// <param name="outside">The air around it [°C].</param>
    /// <param name="altitude">Height above the sea [m].</param>
    /// <returns>The rise [K]; null when something is not known.</returns>
    /// <remarks>Source: <see cref="Vents.Rise"/>.</remarks>
    public double? Rise(double? watts, double outside, double altitude) =>
        watts is { } heat && WattsPerKelvin is { } faces ? Vents.Rise(heat, (VentArea, VentsApart), faces, outside, altitude) : null;

    /// <summary>Heat that it loses at a rise.</summary>
    /// <param name="kelvins">The rise [K]; 0 or more.</param>
    /// <param name="outside">The air around it [°C].</param>
    /// <param name="altitude">Height above the sea [m].</param>
    /// <returns>The heat [W]; null when something is not known.</returns>
    /// <remarks>Source: the same balance, read the other way.</remarks>
    public double? WattsAt(double kelvins, double outside, double altitude) => WattsPerKelvin is not { } faces ? null
        : faces * kelvins + Air.Density(outside, altitude) * Air.HeatPerKilogram * Vents.Flow(VentArea, VentsApart, kelvins, outside) * kelvins;
}

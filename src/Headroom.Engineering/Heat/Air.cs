namespace Headroom.Engineering.Heat;

/// <summary>What air weighs and what it carries, by height and temperature.</summary>
public static class Air
{
    /// <summary>Heat that a kilogram of air takes for a kelvin [J/(kg·K)].</summary>
    public const double HeatPerKilogram = 1006;

    /// <summary>0 °C [K].</summary>
    public const double Zero = 273.15;

    /// <summary>Density at 20 °C and sea level [kg/m³], ISO 2533 constants.</summary>
    public const double Usual = 1.2041;

    // ISO 2533, from memory: sea level, lapse of 6.5 K a kilometre, exponent g / (R · lapse), gas constant of dry air.
    private const double SeaCelsius = 15;
    private const double SeaPascals = 101325;
    private const double LapsePerMetre = 0.0065;
    private const double Exponent = 5.255877;
    private const double GasConstant = 287.05287;

    /// <summary>Temperature of the standard atmosphere.</summary>
    /// <param name="metres">Height above the sea [m]; -500 to 11 000.</param>
    /// <returns>The temperature [K].</returns>
    /// <remarks>Source: ISO 2533, from memory: 288.15 − 0.0065 h.</remarks>
    public static double StandardKelvins(double metres)
    {
        if (!(metres is >= -500 and <= 11_000))
            throw new ArgumentOutOfRangeException(nameof(metres), metres, FormattableString.Invariant($"metres is {metres} m; it must lie between -500 and 11000 m."));
        return SeaCelsius + Zero - LapsePerMetre * metres;
    }

    /// <summary>Pressure of the standard atmosphere.</summary>
    /// <param name="metres">Height above the sea [m]; -500 to 11 000.</param>
    /// <returns>The pressure [Pa].</returns>
    /// <remarks>Source: ISO 2533, from memory: 101325 (T / 288.15)^5.255877.</remarks>
    public static double Pressure(double metres) => SeaPascals * Math.Pow(StandardKelvins(metres) / (SeaCelsius + Zero), Exponent);

    /// <summary>Density of dry air.</summary>
    /// <param name="celsius">Its temperature [°C]; above absolute zero.</param>
    /// <param name="metres">Height above the sea [m]; -500 to 11 000.</param>
    /// <returns>The density [kg/m³].</returns>
    /// <remarks>Source: ideal gas, p / (287.05287 T).</remarks>
    public static double Density(double celsius, double metres = 0)
    {
        Require.Above0(celsius + Zero, "K");
        return Pressure(metres) / (GasConstant * (celsius + Zero));
    }

    /// <summary>Flow that carries heat away.</summary>
    /// <param name="watts">The heat [W]; 0 or more.</param>
    /// <param name="kelvins">By how much the air may grow warmer [K]; above 0.</param>
    /// <param name="density">Density of the air [kg/m³]; above 0.</param>
    /// <returns>The flow [m³/s].</returns>
    /// <remarks>Source: balance of heat, P = ρ c V ΔT.</remarks>
    public static double FlowFor(double watts, double kelvins, double density = Usual)
    {
        Require.Above0(kelvins, "K");
        return watts / (density * HeatPerKilogram * kelvins);
    }

    /// <summary>By how much a flow of air grows warmer.</summary>
    /// <param name="watts">The heat it takes up [W]; 0 or more.</param>
    /// <param name="flow">The flow [m³/s]; above 0.</param>
    /// <param name="density">Density of the air [kg/m³]; above 0.</param>
    /// <returns>The rise [K].</returns>
    /// <remarks>Source: balance of heat, P = ρ c V ΔT.</remarks>
    public static double Rise(double watts, double flow, double density = Usual)
    {
        Require.Above0(flow, "m³/s");
        return watts / (density * HeatPerKilogram * flow);
    }

    /// <summary>By how much the inlet is warmer than the room when a share of the outlet's air comes back.</summary>
    /// <param name="share">The share that comes back [1]; 0 or more, below 1.</param>
    /// <param name="kelvins">Rise of the air through the device [K]; 0 or more.</param>
    /// <returns>The rise at the inlet [K].</returns>
    /// <remarks>Source: balance of the mixed air, f / (1 − f) ΔT.</remarks>
    public static double Returned(double share, double kelvins)
    {
        if (!(share is >= 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(share), share, FormattableString.Invariant($"share is {share}; it must be 0 or more and below 1."));
        return share / (1 - share) * kelvins;
    }
}

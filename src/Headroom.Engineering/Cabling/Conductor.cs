namespace Headroom.Engineering.Cabling;

/// <summary>A round wire: its gauge, its cross-section and its resistance.</summary>
public static class Conductor
{
    /// <summary>Resistivity of annealed copper at 20 °C [Ω·mm²/m], 1/58. Source: IEC 60028, from memory.</summary>
    // Kept as a quotient so that the figure the standard prints stays visible.
    public const double CopperOhmSquareMillimetresPerMetre = 1.0 / 58;

    /// <summary>Rise of copper's resistance for each kelvin above 20 °C [1/K]. Source: IEC 60028, from memory.</summary>
    public const double TemperatureCoefficientPerKelvin = 0.00393;

    /// <summary>Temperature to which wire tables refer [°C]. Source: IEC 60028, from memory.</summary>
    public const double ReferenceCelsius = 20;

    // ASTM B258: gauge 36 is 0.005 inch, gauge 0000 is 0.46 inch, 39 equal steps of ratio between them.
    private const double Gauge36Millimetres = 0.127;
    private const double WholeRatio = 92;
    private const double Steps = 39;

    /// <summary>Diameter of a solid wire of an American gauge [mm].</summary>
    /// <param name="awg">Gauge number [AWG]; -3 for 0000; finite.</param>
    /// <returns>Diameter without insulation [mm].</returns>
    /// <remarks>Source: ASTM B258, from memory.</remarks>
    public static double DiameterMillimetres(double awg)
    {
        Require.AtLeast(-3, awg, "AWG");
        return Gauge36Millimetres * Math.Pow(WholeRatio, (36 - awg) / Steps);
    }

    /// <summary>Cross-section of a solid wire of an American gauge [mm²].</summary>
    /// <param name="awg">Gauge number [AWG]; -3 for 0000; finite.</param>
    /// <returns>Cross-section of the metal [mm²].</returns>
    /// <remarks>Source: ASTM B258, from memory; area of a circle.</remarks>
    public static double AreaSquareMillimetres(double awg)
    {
        var diameter = DiameterMillimetres(awg);
        return Math.PI * diameter * diameter / 4;
    }

    /// <summary>American gauge of a solid wire, as a number that need not be whole [AWG].</summary>
    /// <param name="squareMillimetres">Cross-section of the metal [mm²]; above 0.</param>
    /// <returns>Gauge number [AWG].</returns>
    /// <remarks>Source: ASTM B258, from memory, solved for the gauge.</remarks>
    public static double Awg(double squareMillimetres)
    {
        Require.Above0(squareMillimetres, "mm²");
        var diameter = Math.Sqrt(4 * squareMillimetres / Math.PI);
        return 36 - Steps * Math.Log(diameter / Gauge36Millimetres) / Math.Log(WholeRatio);
    }

    /// <summary>Resistance of one conductor for each metre [Ω/m].</summary>
    /// <param name="squareMillimetres">Cross-section of the metal [mm²]; above 0.</param>
    /// <param name="celsius">Temperature of the conductor [°C]; where the factor of copper stays above 0.</param>
    /// <param name="conductivityShare">Conductivity as a share of annealed copper [1]: 1 for copper, about 0.63 for copper-clad aluminium.</param>
    /// <returns>Resistance [Ω/m] along the conductor; twisting makes it 1 to 3 % longer than the cable, which is not counted here.</returns>
    /// <remarks>Source: IEC 60028, from memory. The coefficient of copper stands for every share: aluminium's own differs by about 3 %.</remarks>
    public static double OhmsPerMetre(double squareMillimetres, double celsius, double conductivityShare = 1)
    {
        Require.Above0(squareMillimetres, "mm²");
        Require.Share(conductivityShare);
        return CopperOhmSquareMillimetresPerMetre / (conductivityShare * squareMillimetres) * Factor(celsius);
    }

    /// <summary>Resistance at a temperature as a multiple of that at 20 °C [1].</summary>
    /// <param name="celsius">Temperature of the conductor [°C]; above -234 °C, where the straight line would reach 0.</param>
    /// <returns>Factor [1], 1 at 20 °C.</returns>
    /// <remarks>Source: IEC 60028, from memory.</remarks>
    public static double Factor(double celsius)
    {
        Require.AtLeast(-234, celsius, "°C");
        return 1 + TemperatureCoefficientPerKelvin * (celsius - ReferenceCelsius);
    }

    /// <summary>Temperature at which the resistance is a given multiple of that at 20 °C [°C].</summary>
    /// <param name="factor">Resistance over resistance at 20 °C [1]; above 0.</param>
    /// <returns>Temperature of the conductor [°C].</returns>
    /// <remarks>Source: IEC 60028, from memory, solved for the temperature.</remarks>
    public static double CelsiusForFactor(double factor)
    {
        Require.Above0(factor, "(a ratio)");
        return ReferenceCelsius + (factor - 1) / TemperatureCoefficientPerKelvin;
    }
}

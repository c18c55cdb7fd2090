namespace Headroom.Engineering.Heat;

/// <summary>How warm a case may become where people touch it. From memory: never shown as the word of the standard.</summary>
public static class TouchLimits
{
    /// <summary>A bare metal case that is touched for 1 to 10 s [°C].</summary>
    public const double Metal = 60;

    /// <summary>A plastic one [°C].</summary>
    public const double Plastic = 77;

    /// <summary>The warmest a surface may be.</summary>
    /// <param name="seconds">How long it is touched [s]; 0 or more.</param>
    /// <param name="material">metal, glass or plastic.</param>
    /// <returns>The temperature [°C], for equipment tested at 25 °C.</returns>
    /// <remarks>Source: IEC 62368-1, table 38 (TS1), from memory; 77 °C seen in a mailing list.</remarks>
    public static double Most(double seconds, string material)
    {
        Require.AtLeast(0, seconds, "s");
        var row = seconds > 60 ? 0 : seconds >= 10 ? 1 : seconds >= 1 ? 2 : 3;
        return material switch
        {
            "metal" => new double[] { 48, 51, Metal, 70 }[row],
            "glass" => new double[] { 48, 56, 71, 85 }[row],
            "plastic" => new double[] { 48, 60, Plastic, 94 }[row],
            _ => throw new ArgumentOutOfRangeException(nameof(material), material, $"material is '{material}'; it must be metal, glass or plastic."),
        };
    }
}

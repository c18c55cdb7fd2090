namespace Headroom.Engineering.Cabling;

/// <summary>How much more a warm cable loses, and how long it may therefore be.</summary>
public static class WarmLength
{
    /// <summary>Temperature up to which the length limits hold as printed [°C]. Source: ANSI/TIA-568-C.2 6.4.7.</summary>
    public const double ReferenceCelsius = 20;

    /// <summary>The warmest for which the standard gives a figure [°C]; beyond it the last slope is drawn on. Source: ANSI/TIA-568-C.2 6.4.7.</summary>
    public const double WarmestCelsius = 60;

    private const double KneeCelsius = 40;
    private const double UnscreenedBelowKnee = 0.004;
    private const double UnscreenedAboveKnee = 0.006;
    private const double Screened = 0.002;

    /// <summary>Loss of a cable as a multiple of its loss at 20 °C [1].</summary>
    /// <param name="celsius">Temperature of the cable [°C]; at 20 °C and below the factor is 1, which is on the safe side.</param>
    /// <param name="screened">True for a cable with a screen.</param>
    /// <returns>1 + 0.4 % for each degree from 20 to 40 °C and 0.6 % above, unscreened; 1 + 0.2 % for each, screened.</returns>
    /// <remarks>Source: ANSI/TIA-568-C.2 6.4.7, quoted in a reflector message of IEEE 802.3; 568.2-D says the same.</remarks>
    public static double LossFactor(double celsius, bool screened)
    {
        Require.AtLeast(-273.15, celsius, "°C");
        if (screened)
            return 1 + Screened * Math.Max(0, celsius - ReferenceCelsius);
        return 1 + UnscreenedBelowKnee * Math.Clamp(celsius - ReferenceCelsius, 0, KneeCelsius - ReferenceCelsius)
            + UnscreenedAboveKnee * Math.Max(0, celsius - KneeCelsius);
    }

    /// <summary>The longest permanent link that loses no more than 90 m do at 20 °C [m].</summary>
    /// <param name="celsius">Temperature of the cable [°C].</param>
    /// <param name="screened">True for a cable with a screen.</param>
    /// <returns>Length [m]; 90 at 20 °C and below.</returns>
    /// <remarks>Source: as <see cref="LossFactor"/>. Up to 0.8 m shorter than the table of the standard's annex G, on the safe side.</remarks>
    public static double LongestMetres(double celsius, bool screened) => ChannelLimits.LinkMetres / LossFactor(celsius, screened);

    /// <summary>The temperature at which a cable loses so much more [°C].</summary>
    /// <param name="factor">Loss over loss at 20 °C [1].</param>
    /// <param name="screened">True for a cable with a screen.</param>
    /// <returns>Temperature [°C], the inverse of <see cref="LossFactor"/>; null below a factor of 1, which no warmth brings about.</returns>
    /// <remarks>Source: as <see cref="LossFactor"/>, solved for the temperature.</remarks>
    public static double? CelsiusForFactor(double factor, bool screened)
    {
        if (!(factor >= 1))
            return null;
        if (screened)
            return ReferenceCelsius + (factor - 1) / Screened;
        var atKnee = 1 + UnscreenedBelowKnee * (KneeCelsius - ReferenceCelsius);
        return factor <= atKnee
            ? ReferenceCelsius + (factor - 1) / UnscreenedBelowKnee
            : KneeCelsius + (factor - atKnee) / UnscreenedAboveKnee;
    }
}

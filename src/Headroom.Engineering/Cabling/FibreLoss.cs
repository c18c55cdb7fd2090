namespace Headroom.Engineering.Cabling;

/// <summary>How much light a fibre link loses.</summary>
public static class FibreLoss
{
    /// <summary>Most loss of a mated pair of connectors [dB]. Source: TIA-568.3-D, from memory.</summary>
    public const double PairDecibels = 0.75;

    /// <summary>Usual loss of a mated pair [dB]. Source: a fibre-optic trade association's page of typical losses.</summary>
    public const double UsualPairDecibels = 0.5;

    /// <summary>Most loss of a splice [dB]. Source: TIA-568.3-D, from memory.</summary>
    public const double SpliceDecibels = 0.3;

    /// <summary>Most loss of multimode at 850 nm by ISO/IEC 11801 and IEEE 802.3 [dB/km]. Source: seen in contributions to IEEE 802.3.</summary>
    public const double IsoMultimodeDecibelsPerKilometre = 3.5;

    /// <summary>Most loss of a kilometre [dB/km].</summary>
    /// <param name="category">OM1 to OM5, OS1a or OS2; <c>outside plant</c> for single mode outdoors by TIA.</param>
    /// <param name="nanometres">Wavelength [nm]: 850, 1300 to 1310, or 1490 to 1550.</param>
    /// <returns>Loss [dB/km]; null where the standards give none.</returns>
    /// <remarks>Source: TIA-568.3-D and ISO/IEC 11801-1 (OS2), from memory.</remarks>
    public static double? DecibelsPerKilometre(string category, double nanometres)
    {
        var (at850, long1300) = (Math.Abs(nanometres - 850) <= 20, nanometres is >= 1260 and <= 1360);
        return category switch
        {
            "OM1" or "OM2" => at850 ? 3.5 : long1300 ? 1.5 : null,
            "OM3" or "OM4" or "OM5" => at850 ? 3.0 : long1300 ? 1.5 : null,
            "OS2" => nanometres is >= 1260 and <= 1625 ? 0.4 : null,
            "OS1a" => nanometres is >= 1260 and <= 1625 ? 1.0 : null,
            "outside plant" => nanometres is >= 1260 and <= 1625 ? 0.5 : null,
            _ => null,
        };
    }

    /// <summary>Most loss of a link [dB].</summary>
    /// <param name="metres">Its length [m]; 0 or more.</param>
    /// <param name="decibelsPerKilometre">Loss of the fibre [dB/km]; 0 or more.</param>
    /// <param name="matedPairs">Connections along it; 0 or more.</param>
    /// <param name="splices">Splices along it; 0 or more.</param>
    /// <returns>Loss [dB].</returns>
    /// <remarks>Source: TIA-568.3-D: the sum of what fibre, connections and splices may lose.</remarks>
    public static double Decibels(double metres, double decibelsPerKilometre, int matedPairs, int splices)
    {
        Require.AtLeast(0, metres, "m");
        Require.AtLeast(0, decibelsPerKilometre, "dB/km");
        Require.Between(0, int.MaxValue, matedPairs);
        Require.Between(0, int.MaxValue, splices);
        return metres / 1000 * decibelsPerKilometre + matedPairs * PairDecibels + splices * SpliceDecibels;
    }
}

namespace Headroom.Engineering.Power;

/// <summary>How a source tells a powered device from anything else before it puts power on the pairs.</summary>
/// <remarks>Source: IEEE 802.3, Tables 33-4 to 33-6, 33-10, 33-14 and 145-14; all from memory save where a member says it was seen.</remarks>
public static class Detection
{
    /// <summary>Least signature resistance of a device [Ω]. Source: IEEE 802.3, Table 33-14, seen in a secondary document.</summary>
    public const double DeviceOhmsMin = 23_700;

    /// <summary>Most signature resistance of a device [Ω]. Source: IEEE 802.3, Table 33-14, seen in a secondary document.</summary>
    public const double DeviceOhmsMax = 26_300;

    /// <summary>Least resistance that a source must accept [Ω]. Source: IEEE 802.3, Table 33-5, from memory.</summary>
    public const double AcceptOhmsMin = 19_000;

    /// <summary>Most resistance that a source must accept [Ω]. Source: IEEE 802.3, Table 33-5, from memory.</summary>
    public const double AcceptOhmsMax = 26_500;

    /// <summary>Resistance below which a source must reject [Ω]. Source: IEEE 802.3, Table 33-6, from memory.</summary>
    public const double RejectBelowOhms = 15_000;

    /// <summary>Resistance above which a source must reject [Ω]. Source: IEEE 802.3, Table 33-6, from memory.</summary>
    public const double RejectAboveOhms = 33_000;

    /// <summary>Least signature capacitance of a device [F]. Source: IEEE 802.3, Table 33-14, from memory.</summary>
    public const double DeviceFaradsMin = 0.05e-6;

    /// <summary>Most signature capacitance of a device [F]. Source: IEEE 802.3, Table 33-14, from memory.</summary>
    public const double DeviceFaradsMax = 0.12e-6;

    /// <summary>Capacitance above which a source must reject [F]. Source: IEEE 802.3, Table 33-6, from memory.</summary>
    public const double RejectAboveFarads = 10e-6;

    /// <summary>Least detection voltage at a valid signature [V]. Source: IEEE 802.3, Table 33-4, from memory.</summary>
    public const double VoltsMin = 2.8;

    /// <summary>Most detection voltage at a valid signature [V]. Source: IEEE 802.3, Table 33-4, from memory.</summary>
    public const double VoltsMax = 10;

    /// <summary>Most detection voltage with nothing plugged in [V]. Source: IEEE 802.3, Table 33-4, from memory.</summary>
    public const double OpenVoltsMax = 30;

    /// <summary>Most detection current into a short circuit [A]. Source: IEEE 802.3, Table 33-4, from memory.</summary>
    public const double ShortAmperesMax = 0.005;

    /// <summary>Whether a resistance is one that a device may show.</summary>
    /// <param name="ohms">Resistance between the powered pairs [Ω]; 0 or more.</param>
    /// <returns>True within the device's own limits, both included.</returns>
    /// <remarks>Source: IEEE 802.3, Table 33-14, seen in a secondary document.</remarks>
    public static bool IsValidSignature(double ohms)
    {
        Require.AtLeast(0, ohms, "Ω");
        return ohms is >= DeviceOhmsMin and <= DeviceOhmsMax;
    }

    /// <summary>What a source does with a resistance.</summary>
    /// <param name="ohms">Resistance between the powered pairs [Ω]; 0 or more.</param>
    /// <returns>Accepts or rejects where the standard says so, either between the two.</returns>
    /// <remarks>Source: IEEE 802.3, Tables 33-5 and 33-6, from memory.</remarks>
    public static SourceAnswer AnswerToOhms(double ohms)
    {
        Require.AtLeast(0, ohms, "Ω");
        return ohms switch
        {
            >= AcceptOhmsMin and <= AcceptOhmsMax => SourceAnswer.Accepts,
            < RejectBelowOhms or > RejectAboveOhms => SourceAnswer.Rejects,
            _ => SourceAnswer.Either,
        };
    }

    /// <summary>What a source does with a capacitance beside a valid resistance.</summary>
    /// <param name="farads">Capacitance between the powered pairs [F]; 0 or more.</param>
    /// <returns>Accepts up to what a device may show, rejects above 10 µF, either between the two.</returns>
    /// <remarks>Source: IEEE 802.3, Tables 33-6 and 33-14, from memory.</remarks>
    public static SourceAnswer AnswerToFarads(double farads)
    {
        Require.AtLeast(0, farads, "F");
        return farads switch
        {
            <= DeviceFaradsMax => SourceAnswer.Accepts,
            > RejectAboveFarads => SourceAnswer.Rejects,
            _ => SourceAnswer.Either,
        };
    }
}

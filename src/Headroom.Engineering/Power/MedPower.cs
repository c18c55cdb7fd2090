namespace Headroom.Engineering.Power;

/// <summary>The LLDP-MED element "Extended Power via MDI". The power refers to the device's end of the cable.</summary>
/// <param name="IsSource">Whether a source speaks.</param>
/// <param name="Origin">Where the speaker's power comes from.</param>
/// <param name="Priority">Priority of the port.</param>
/// <param name="Tenths">Power in tenths of a watt, 0 to 1023.</param>
/// <remarks>Source: TIA-1057, 10.2.5, seen in public source code.</remarks>
public sealed record MedPower(bool IsSource, PowerOrigin Origin, PowerPriority Priority, int Tenths) : PowerTlvBody
{
    /// <summary>Largest value of the field, in tenths of a watt.</summary>
    public const int MostTenths = 1023;

    /// <summary>Power at the device [W].</summary>
    public double Watts => Tenths / 10.0;
}

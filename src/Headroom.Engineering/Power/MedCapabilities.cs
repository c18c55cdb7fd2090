namespace Headroom.Engineering.Power;

/// <summary>The LLDP-MED element "Capabilities".</summary>
/// <param name="Capabilities">What the speaker is able to tell.</param>
/// <param name="DeviceClass">1 to 3 for endpoint class I to III, 4 for a network connection; 0 to 255 on the wire.</param>
/// <remarks>Source: TIA-1057, 10.2.2, from memory.</remarks>
public sealed record MedCapabilities(MedCapability Capabilities, int DeviceClass) : PowerTlvBody;

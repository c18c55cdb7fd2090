namespace Headroom.Engineering.Power;

/// <summary>One pairset of a device with two signatures: two independent loads, each with its own class.</summary>
/// <param name="Number">Class of the pairset, 1 to 5.</param>
/// <param name="SourceWatts">Power that a source keeps for the pairset [W].</param>
/// <param name="DeviceWatts">Most power at the device on the pairset [W].</param>
/// <param name="SourceVoltsMin">Least voltage at the source [V].</param>
public sealed record DualSignatureClass(int Number, double SourceWatts, double DeviceWatts, double SourceVoltsMin);

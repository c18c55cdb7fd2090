namespace Headroom.Engineering.Power;

/// <summary>One powered port in one state.</summary>
/// <param name="DeviceWatts">What the device takes at its connector [W]; null when nobody knows.</param>
/// <param name="Point">Where load and run settle; null when the device's draw or the run is not known, or when they settle nowhere.</param>
/// <param name="PortWatts">What the port gives [W], the loss of the run included; null when not known.</param>
public readonly record struct PortState(double? DeviceWatts, OperatingPoint? Point, double? PortWatts);

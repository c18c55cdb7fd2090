namespace Headroom.Engineering.Power;

/// <summary>Current by which a device shows a class signature, and what the source takes it for.</summary>
/// <param name="Class">Class signature, 0 to 4.</param>
/// <param name="DeviceAmperesMin">Least current that the device draws [A].</param>
/// <param name="DeviceAmperesMax">Most current that the device draws [A].</param>
/// <param name="SourceAmperesMin">Least current that the source must take for the class [A].</param>
/// <param name="SourceAmperesMax">Most current that the source must take for the class [A].</param>
public sealed record ClassCurrent(
    int Class, double DeviceAmperesMin, double DeviceAmperesMax, double SourceAmperesMin, double SourceAmperesMax);

namespace Headroom.Engineering.Power;

/// <summary>What a device asks and a source gives, from the 12-octet form on. Powers refer to the device's end of the cable.</summary>
/// <param name="IsSource">Whether a source speaks.</param>
/// <param name="IsType1">Whether the speaker is of type 1; else of type 2 or later.</param>
/// <param name="Origin">Where the speaker's power comes from.</param>
/// <param name="Priority">Priority of the port.</param>
/// <param name="RequestedTenths">Power asked for, in tenths of a watt, 0 to 65535.</param>
/// <param name="AllocatedTenths">Power given, in tenths of a watt, 0 to 65535.</param>
/// <param name="FourPair">Fields of types 3 and 4; null in the 12-octet form.</param>
public sealed record PowerAllocation(
    bool IsSource, bool IsType1, PowerOrigin Origin, PowerPriority Priority, int RequestedTenths, int AllocatedTenths, FourPairPower? FourPair)
{
    /// <summary>Power asked for at the device [W].</summary>
    public double RequestedWatts => RequestedTenths / 10.0;

    /// <summary>Power given at the device [W].</summary>
    public double AllocatedWatts => AllocatedTenths / 10.0;
}

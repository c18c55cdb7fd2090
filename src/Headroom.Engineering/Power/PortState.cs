namespace Headroom.Engineering.Power;

/// <summary>One powered port in one state. Kept small: there are five of them for every endpoint.</summary>
/// <param name="deviceWatts">What the device takes at its connector [W]; null when nobody knows.</param>
/// <param name="point">Where load and run settle; null when the device's draw or the run is not known, or when they settle nowhere.</param>
/// <param name="portWatts">What the port gives [W], the loss of the run included; null when not known.</param>
public readonly struct PortState(double? deviceWatts, OperatingPoint? point, double? portWatts)
{
    // Not-a-number stands for "not known" inside.
    private readonly double _deviceWatts = deviceWatts ?? double.NaN;
    private readonly double _portWatts = portWatts ?? double.NaN;
    private readonly double _loadVolts = point?.LoadVolts ?? double.NaN;

    /// <summary>A state of which nothing is known.</summary>
    public static PortState NotKnown => new(null, null, null);

    /// <summary>What the device takes at its connector [W]; null when nobody knows.</summary>
    public double? DeviceWatts => Known(_deviceWatts);

    /// <summary>Where load and run settle; null when the device's draw or the run is not known, or when they settle nowhere.</summary>
    public OperatingPoint? Point => double.IsNaN(_loadVolts) ? null
        : new(_loadVolts, _loadVolts > 0 ? _deviceWatts / _loadVolts : 0, _portWatts - _deviceWatts, _portWatts);

    /// <summary>What the port gives [W], the loss of the run included; null when not known.</summary>
    public double? PortWatts => Known(_portWatts);

    private static double? Known(double value) => double.IsNaN(value) ? null : value;
}

using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Jobs;

/// <summary>In which units a reserve of each kind of limit may be written.</summary>
internal static class ReserveKinds
{
    /// <summary>A number of ports; it may stand without a unit.</summary>
    public static UnitTable Ports { get; } = new("a number of ports", [new Unit("ports", 1, 0, "port", "")]);

    /// <summary>A number of devices; it may stand without a unit.</summary>
    public static UnitTable Devices { get; } = new("a number of devices", [new Unit("devices", 1, 0, "device", "")]);

    /// <summary>A number of spares; it may stand without a unit.</summary>
    public static UnitTable Pieces { get; } = new("a number of pieces", [new Unit("pieces", 1, 0, "piece", "")]);

    /// <summary>A number of cables; it may stand without a unit.</summary>
    public static UnitTable Cables { get; } = new("a number of cables", [new Unit("cables", 1, 0, "cable", "")]);

    /// <summary>A number of mains outlets; it may stand without a unit.</summary>
    public static UnitTable Outlets { get; } = new("a number of outlets", [new Unit("outlets", 1, 0, "outlet", "")]);

    /// <summary>A number of addresses; it may stand without a unit.</summary>
    public static UnitTable Addresses { get; } = new("a number of addresses", [new Unit("addresses", 1, 0, "address", "")]);

    /// <summary>The units by the kind's name in the policy; none for kinds of which only a share is kept.</summary>
    public static IReadOnlyDictionary<string, UnitTable> Units { get; } = new Dictionary<string, UnitTable>
    {
        ["power"] = Watts.Units,
        ["ports"] = Ports,
        ["volts"] = Volts.Units,
        ["amperes"] = Amperes.Units,
        ["start"] = Seconds.Units,
        ["keep-alive"] = Amperes.Units,
        ["length"] = Metres.Units,
        ["sound"] = Decibels.Units,
        ["air"] = CubicMetresPerHour.Units,
        ["temperature"] = Kelvins.Units,
        ["runtime"] = Seconds.Units,
        ["apparent"] = VoltAmperes.Units,
        ["back"] = Seconds.Units,
        ["uplink"] = BitsPerSecond.Units,
        ["port speed"] = BitsPerSecond.Units,
        ["recording"] = Seconds.Units,
        ["dark"] = Ports,
        ["outage"] = Seconds.Units,
        ["spares"] = Pieces,
        ["fibre"] = Decibels.Units,
        ["rack"] = RackUnits.Units,
        ["depth"] = Metres.Units,
        ["weight"] = Kilograms.Units,
        ["cords"] = Metres.Units,
        ["ohms"] = Ohms.Units,
        ["unbalance"] = Ohms.Units,
        ["bundle"] = Cables,
        ["separation"] = Metres.Units,
        ["outlets"] = Outlets,
        ["clearance"] = Metres.Units,
        ["addresses"] = Addresses,
    };
}

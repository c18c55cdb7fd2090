using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class LldpFigures
{
    // The meanings printed beside the octets of L-1 to L-8.
    private static readonly Dictionary<string, PowerTlvBody> Meanings = new()
    {
        ["L-1"] = new PowerViaMdi(MdiSupport.None, PairsCode: 1, ClassCode: 4, null),
        ["L-2"] = new PowerViaMdi(Source, PairsCode: 1, ClassCode: 5, null),
        ["L-3"] = new PowerViaMdi(MdiSupport.None, PairsCode: 1, ClassCode: 5, new(
            IsSource: false, IsType1: false, PowerOrigin.Cable, PowerPriority.Low, RequestedTenths: 185, AllocatedTenths: 185, null)),
        ["L-4"] = new PowerViaMdi(Source, PairsCode: 1, ClassCode: 5, new(
            IsSource: true, IsType1: false, PowerOrigin.Primary, PowerPriority.High, RequestedTenths: 185, AllocatedTenths: 185, null)),
        ["L-5"] = new PowerViaMdi(Source, PairsCode: 1, ClassCode: 5, new(
            IsSource: true, IsType1: false, PowerOrigin.Primary, PowerPriority.High, RequestedTenths: 510, AllocatedTenths: 510, FourPair)),
        ["L-6"] = new MedPower(IsSource: false, PowerOrigin.Cable, PowerPriority.Low, Tenths: 65),
        ["L-7"] = new MedPower(IsSource: true, PowerOrigin.Primary, PowerPriority.High, Tenths: 154),
        ["L-8"] = new MedCapabilities(
            MedCapability.Capabilities | MedCapability.NetworkPolicy | MedCapability.DevicePower | MedCapability.Inventory, DeviceClass: 3),
    };

    private static MdiSupport Source => MdiSupport.IsSource | MdiSupport.Supported | MdiSupport.Enabled;

    // Type 3 source, four pairs, single signature, class 6, ceiling 51.0 W.
    private static FourPairPower FourPair => new(
        new DualPower(0, 0, 0, 0), SourceStatus: 2, DeviceStatus: 1, PairsExtension: 3, ClassCodeA: 7, ClassCodeB: 7, ClassCode: 6,
        TypeCode: 0, LoadIsolated: false, CeilingTenths: 510, AutoclassBits: 0, PowerDownBits: 0);

    internal static Figure Work(Printed printed) => printed.Id.StartsWith("LF", StringComparison.Ordinal) ? LldpFieldFigures.Work(printed) : Octets(printed);

    internal static byte[] Written(string id) => PowerTlv.Encode(Meanings[id]);

    private static Figure Octets(Printed printed)
    {
        var read = PowerTlv.Decode(PrintedOctets(printed.Id)).Body;
        var allocation = (read as PowerViaMdi)?.Allocation;
        return printed.What switch
        {
            "octets written from the meaning" => Convert.ToHexStringLower(Written(printed.Id)),
            "meaning read from the octets is the same" => read == Meanings[printed.Id],
            "class" => allocation?.FourPair?.Class ?? ((PowerViaMdi)read!).Class,
            "asked" => allocation?.RequestedWatts,
            "allocated" => allocation?.AllocatedWatts,
            "ceiling" => allocation?.FourPair?.CeilingWatts,
            "type" => $"{allocation?.FourPair?.Type}",
            "power" => ((MedPower)read!).Watts,
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static byte[] PrintedOctets(string id) => Convert.FromHexString(Csv.Read("lldp-power").Select(Printed.From)
        .Single(row => row.Id == id && row.What == "octets written from the meaning").Expected);
}

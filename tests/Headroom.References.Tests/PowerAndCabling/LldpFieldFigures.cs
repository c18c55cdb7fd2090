using System.Globalization;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

/// <summary>Rows LF: single fields, read by setting their bits in the elements of rows L.</summary>
internal static class LldpFieldFigures
{
    // Offsets from the header on, in "Power via MDI" and in "Extended Power via MDI".
    private const int SupportOctet = 6;
    private const int PairsOctet = 7;
    private const int ClassOctet = 8;
    private const int TypeOctet = 9;
    private const int StatusOctet = 22;
    private const int SetupOctet = 24;
    private const int MedValueOctet = 7;

    internal static Figure Work(Printed printed) => printed.Id switch
    {
        "LF-1" or "LF-2" => Header(printed),
        "LF-3" or "LF-4" or "LF-5" => Field(printed),
        "LF-6" or "LF-7" => FourPairField(printed),
        "LF-11" or "LF-12" => Times(printed),
        _ => Meaning(printed),
    };

    private static Figure Header(Printed printed) => printed.What switch
    {
        "type" => LldpFigures.Written("L-1")[0] >> 1,
        "lengths of the three forms" => Figure.List(new[] { "L-1", "L-3", "L-5" }.Select(id => (LldpFigures.Written(id)[0] & 1) << 8 | LldpFigures.Written(id)[1])),
        "a length between the forms" => PowerTlv.Decode([0xfe, 0x08, .. LldpFigures.Written("L-1")[2..], 0]).Body is null ? "refused" : "read",
        "organisation and subtype" => Convert.ToHexStringLower(LldpFigures.Written("L-1").AsSpan(2, 4)),
        "organisation and subtype, MED" => Convert.ToHexStringLower(LldpFigures.Written("L-6").AsSpan(2, 4)),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Field(Printed printed) => printed.What switch
    {
        "bits 0 to 3 alone" => Figure.List(new[] { 1, 2, 4, 8 }.Select(bit => Mdi("L-1", SupportOctet, bit).Support)),
        "pairs read from 1, 2" => Figure.List(new[] { 1, 2 }.Select(code => Mdi("L-1", PairsOctet, code).PairsCode)),
        "class read from 0 to 6" => Figure.List(Enumerable.Range(0, 7).Select(code => Mdi("L-1", ClassOctet, code).Class?.ToString(CultureInfo.InvariantCulture) ?? "none")),
        "type bits 00, 01, 10, 11" => Figure.List(Allocations(6).Select(a => $"type {(a.IsType1 ? 1 : 2)} {(a.IsSource ? "source" : "device")}"), "; "),
        "source bits 1, 2 of a source" => Figure.List(Allocations(4).Skip(1).Take(2).Select(a => a.Origin)),
        "source bits 1, 2, 3 of a device" => Figure.List(Allocations(4, others: 0x40).Skip(1).Select(a => a.Origin)),
        "priority bits 0 to 3" => Figure.List(Allocations(0).Select(a => a.Priority)),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure FourPairField(Printed printed) => printed.What switch
    {
        "status 9ff6: source, device, pairs, class A, class B, class" => Status(FourPair(StatusOctet, 0x9f, 0xf6)),
        "single class read from 1 to 8 and 15" => Figure.List(Enumerable.Range(1, 8).Append(15).Select(code => FourPair(StatusOctet, 0x9f, 0xf0 | code))
            .Select(power => power.IsDual ? "dual" : power.Class?.ToString(CultureInfo.InvariantCulture))),
        "type codes 0 to 5" => Figure.List(Enumerable.Range(0, 6).Select(code => FourPair(SetupOctet, code << 1))
            .Select(power => $"{power.Type} {(power.IsSource == true ? "source" : "device")}"), "; "),
        "bit of isolated loads" => FourPair(SetupOctet, 1).LoadIsolated,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Meaning(Printed printed) => printed.What switch
    {
        "value 0" => Med(0)?.Watts,
        "value 1023" => Med(1023)?.Watts,
        "value 1024" => Med(1024) is null ? "refused" : "read",
        "value of a 15.4 W port" => PoeClasses.DeviceWatts(3) * 10,
        "L-7 advertises more than class 3" => ((MedPower)PowerTlv.Decode(LldpFigures.Written("L-7")).Body!).Watts > PoeClasses.DeviceWatts(3),
        "29 octets may be ignored by types 1 to 4" => Figure.List(Enum.GetValues<PoeType>().Select(Mdi("L-5", PairsOctet, 1).MayBeIgnoredBy)),
        "length after falling back" => PowerTlv.Encode(Mdi("L-5", PairsOctet, 1).Shortened()).Length - 2,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Times(Printed printed) => printed.What switch
    {
        "transmit every" => LldpTimes.TransmitSeconds,
        "hold" => LldpTimes.Hold,
        "time to live" => LldpTimes.TimeToLiveSeconds,
        "fast start, spacing" => LldpTimes.FastSeconds,
        "fast start, messages" => LldpTimes.FastCount,
        "source answers within" => LldpTimes.AnswerSeconds,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Status(FourPairPower power) => Figure.List(
        new[] { power.SourceStatus, power.DeviceStatus, power.PairsExtension, power.ClassCodeA, power.ClassCodeB, power.ClassCode });

    // The four values of two bits, the other bits of the octet as given.
    private static IEnumerable<PowerAllocation> Allocations(int shift, int others = 0) =>
        Enumerable.Range(0, 4).Select(code => Mdi("L-3", TypeOctet, code << shift | others).Allocation!);

    private static FourPairPower FourPair(int octet, params int[] values) => Mdi("L-5", octet, values).Allocation!.FourPair!;

    private static PowerViaMdi Mdi(string id, int octet, params int[] values) => (PowerViaMdi)PowerTlv.Decode(Changed(id, octet, values)).Body!;

    private static MedPower? Med(int tenths) => (MedPower?)PowerTlv.Decode(Changed("L-6", MedValueOctet, tenths >> 8, tenths & 255)).Body;

    private static byte[] Changed(string id, int octet, params int[] values)
    {
        var octets = LldpFigures.Written(id);
        for (var i = 0; i < values.Length; i++)
            octets[octet + i] = (byte)values[i];
        return octets;
    }
}

using System.Globalization;
using Headroom.Domain.Addresses;
using Headroom.Engineering.Addressing;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Office;

internal static class AddressFigures
{
    internal static Figure Work(Printed printed) => printed.Id switch
    {
        "4.2/last" => Range(Last(printed.What)).Last.ToString(),
        "4.2/overlap" => Range("10.0.0.0/30").Overlaps(Range("10.0.0.2/31")),
        "4.2/refused" => Ip4Range.Read(printed.What.Split(' ')[0], out _) is not null,
        "4.3/parts" when printed.IsNumber => new Ip6Range(0, 48).Parts(64),
        "4.3/parts" => Ip6Range.Read(Last(printed.What), out _)!.Value.Part(42, 64)!.Value.ToString(),
        "4.3/groups" => HardwareAddress.OfGroup(Ip4.Read(Last(printed.What))!.Value).ToString(),
        "4.3/forms" => HardwareAddress.Read(Last(printed.What))?.ToString() ?? "none",
        "4.3/names" => HostLabel.Wrong(Label(printed.What)) is null,
        "4.3/bits" => Figure.List<bool>([Hardware(printed).IsGroup, Hardware(printed).IsLocal]),
        "4.3/eui" or "4.3/solicited" => Derived(printed),
        var id when id.StartsWith("4.1/", StringComparison.Ordinal) => Prefix(printed),
        var id when id.StartsWith("4.3/lease", StringComparison.Ordinal) => Lease(printed),
        _ => Allocated(printed.What),
    };

    private static Figure Prefix(Printed printed)
    {
        var range = new Ip4Range(new Ip4(0), int.Parse(printed.Id[4..], CultureInfo.InvariantCulture));
        return printed.What switch { "mask" => range.Mask.ToString(), "wildcard" => range.Wildcard.ToString(), _ => (double)range.Hosts };
    }

    private static Figure Allocated(string what)
    {
        var (from, needs) = (what[..what.IndexOf(": ", StringComparison.Ordinal)], what[(what.IndexOf(": ", StringComparison.Ordinal) + 2)..]);
        var placed = new SubnetRoom(Range(from)).TakeAll(needs.Split(", ").Select(need => (need.Split(' ')[0], long.Parse(need.Split(' ')[1], CultureInfo.InvariantCulture))));
        return string.Join(", ", placed.Select(one => $"{one.Name} {one.Range}"));
    }

    private static Figure Derived(Printed printed)
    {
        var address = Hardware(printed);
        return printed.What.StartsWith("interface", StringComparison.Ordinal)
            ? string.Join('-', Enumerable.Range(0, 8).Select(octet => (address.InterfaceId >> 56 - 8 * octet & 255).ToString("X2", CultureInfo.InvariantCulture)))
            : Ip6Range.Show(printed.Id == "4.3/eui" ? address.LinkLocal : address.SolicitedNode);
    }

    private static Figure Lease(Printed printed)
    {
        var numbers = PrintedNumbers.In(printed.What)[^3..];
        var mean = LeasePool.Mean(numbers[0], LeasePool.HeldHours(numbers[1], numbers[2]));
        return printed.What.StartsWith("mean", StringComparison.Ordinal) ? mean : LeasePool.Needed(mean, LeasePool.Enough);
    }

    private static string Label(string what)
    {
        var text = what[(what.IndexOf('\'', StringComparison.Ordinal) + 1)..^1];
        return text.EndsWith(" x a", StringComparison.Ordinal) ? new string('a', int.Parse(text[..^4], CultureInfo.InvariantCulture)) : text;
    }

    private static HardwareAddress Hardware(Printed printed) => HardwareAddress.Read(Last(printed.What))!.Value;

    private static Ip4Range Range(string text) => Ip4Range.Read(text, out _)!.Value;

    private static string Last(string what) => what[(what.LastIndexOf(' ') + 1)..];
}

using Headroom.Domain.Addresses;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Addressing;

namespace Headroom.Engineering.Sums.Addressing;

/// <summary>How wide a subnet must be.</summary>
internal static class SubnetFor
{
    private static readonly NumberInput Devices = new("devices", "that need an address today", new Bounds(1, 1_000_000));
    private static readonly QuantityInput Growth = new("growth", "beyond them", Share.Units, new(0, 1000, "%")) { Default = "100 %", DefaultWhy = "as many again (common practice, no source)" };

    private static readonly SumOutput Prefix = new("prefix", "", "prefix of the subnet");
    private static readonly SumOutput Hosts = new("hosts", "", "devices that it has addresses for");
    private static readonly SumOutput Planned = new("planned", "", "addresses wanted, the router's too");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "subnet-for",
        Discipline = AddressingSums.Discipline,
        Answers = "how wide a subnet do so many devices need?",
        Inputs = [Devices, Growth],
        Outputs = [Prefix, Hosts, Planned],
        Formula = "the smallest 2^(32 − prefix) − 2 that holds devices · (1 + growth) + 1",
        Source = "RFC 950, RFC 4632, from memory",
        Example = "devices 27 growth 50 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var planned = SubnetSize.Planned((int)given[Devices], given[Growth]);
        var prefix = SubnetSize.PrefixFor(planned)!.Value;
        var range = new Ip4Range(new Ip4(0), prefix);
        return new SumAnswer(
            $"A /{new Told(prefix, "")} has addresses for {new Told(range.Hosts, "devices")}; {new Told(planned, "addresses")} are wanted.",
            [Prefix.Is(prefix), Hosts.Is(range.Hosts), Planned.Is(planned)],
            [new("wanted", $"{Words.Of(given[Devices])} · {Words.Of(1 + given[Growth])} + 1", planned, ""), new("mask", range.Mask.ToString(), null, ""), new("hosts", $"2^{32 - prefix} − 2", range.Hosts, "")]);
    }
}

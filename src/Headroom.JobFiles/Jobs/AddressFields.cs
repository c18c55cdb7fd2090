using Headroom.Domain.Addresses;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What addresses the site may use, and how its devices are called.</summary>
internal static class AddressFields
{
    private static readonly Field<Given<Ip4Range>> From = new("from", new Ip4RangeShape(), "The range that addresses are taken from.", "10.44.0.0/21");
    private static readonly Field<IReadOnlyList<Given<Ip4Range>>> Elsewhere = new(
        "elsewhere", new ListShape<Given<Ip4Range>>("range", new Ip4RangeShape()) { OrOne = true }, "Ranges that are used elsewhere, such as behind a tunnel, and are kept clear.", "[10.44.6.0/24]");
    private static readonly Field<Given<Ip6Range>> Six = new("six", new Ip6RangeShape(), "The range of version 6.", "fd4c:12ab:77::/48");
    private static readonly Field<Given<Share>> Growth = new("growth", () => Sensible.Growth, "How much each subnet is to grow beyond what it needs today; as much again without it.", "100 %");
    private static readonly Field<string> Names = new("names", Shapes.Text, "The firm's own pattern for names, from {role}, {place}, {number} and {id}.", "\"{role}-{place}-{number}\"");
    private static readonly Field<string> Suffix = new("suffix", Shapes.Text, "What stands behind every name.", "barn.internal");
    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Subnet>>> Subnets = new(
        "subnets", () => SubnetFields.Map, "The parts of the network that are kept apart, in order: a new one at the end moves no other.", "{phones: {for: phone, vlan: 20}}");

    /// <summary>The addresses.</summary>
    public static ObjectShape<AddressPlan> Shape { get; } = new("address plan", [From, Elsewhere, Six, Growth, Names, Suffix, Subnets], Build)
    {
        About = "The addresses a site may use, and how its devices are called.",
    };

    private static AddressPlan Build(Values values) => new(
        values.Get(From),
        values.List(Elsewhere),
        values.Get(Six),
        values.Get(Growth),
        values.Get(Names),
        values.Get(Suffix),
        Named.Each(values.Get(Subnets), (subnet, name, at) => subnet with { Id = name, At = at }, values.Reader),
        values.At);
}

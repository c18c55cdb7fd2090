using Headroom.Domain.Addresses;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>The parts of the network that are kept apart.</summary>
internal static class SubnetFields
{
    private static readonly Field<int> Vlan = new("vlan", new CountShape(1, 4094), "Its number on the switches.", "20");
    private static readonly Field<IReadOnlyList<string>> For = new(
        "for",
        new ListShape<string>("kind", Shapes.Words("phone", "access point", "camera", "door station", "radio", "switch", "other", Subnet.Units)) { OrOne = true },
        "The kinds of endpoints in it; 'units' are switches and standby supplies.",
        "[phone, door station]");
    private static readonly Field<IReadOnlyList<string>> In = new("in", new ListShape<string>("space", Shapes.Name("a space")) { OrOne = true }, "The spaces whose endpoints are in it; all of them without it.", "kennels");
    private static readonly Field<int> MoreHosts = new("more hosts", new CountShape(0, 1_000_000), "Devices that are not written down, such as those of staff.", "15");
    private static readonly Field<Given<Ip4Range>> Range = new("range", new Ip4RangeShape(), "The range it has already or is to have; without it the next free one.", "10.44.2.0/26");

    private static readonly Field<int> PerHour = new("an hour", new CountShape(1, 100_000), "How many come in an hour.", "20") { IsRequired = true };
    private static readonly Field<Given<Seconds>> Stay = new("stay", () => Sensible.Stay, "How long each stays.", "90 min") { IsRequired = true };
    private static readonly Field<Given<Seconds>> Lease = new("lease", () => Sensible.Stay, "For how long an address is lent.", "2 h") { IsRequired = true };
    private static readonly Field<Visitors> Guests = new(
        "visitors",
        new ObjectShape<Visitors>("visitors", [PerHour, Stay, Lease], values => new Visitors(values.Must(PerHour), values.Must(Stay), values.Must(Lease))),
        "Devices that come and go, each asking for an address.",
        "{an hour: 20, stay: 90 min, lease: 2 h}");

    /// <summary>The subnets by name.</summary>
    public static MapShape<IReadOnlyList<string>, Subnet> Map { get; } = Named.Map(
        "subnet",
        new ObjectShape<Subnet>("subnet", [Vlan, For, In, MoreHosts, Guests, Range], Build) { About = "A part of the network that is kept apart from the others." },
        "phones");

    private static Subnet Build(Values values) => new(
        "", values.Maybe(Vlan), values.List(For), values.List(In), values.Maybe(MoreHosts), values.Get(Guests), values.Get(Range), values.At);
}

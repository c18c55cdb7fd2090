using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What the building dictates.</summary>
internal static class SurveyFields
{
    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Space>>> Spaces = new(
        "spaces", () => SpaceFields.Map, "Rooms, cupboards, yards, by the name people say.", "{reception: {size: 6 x 5 x 2.7 m, kind: reception}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Listener>>> Listeners = new(
        "listeners", () => ListenerFields.Map, "People who must not be disturbed.", "{desk: {in: reception, at: 2.2 x 1.4 x 1.2 m, limit: 40 dB(A)}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Rack>>> Racks = new(
        "racks", () => RackFields.Map, "Racks and wall cabinets.", "{A: {in: cupboard, height: 12 U}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Pathway>>> Pathways = new(
        "pathways", () => PathwayFields.Map, "Conduits, trays and other ways of cables.", "{loft: {kind: conduit, inside: 35.1 mm}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Drop>>> Drops = new(
        "drops", () => DropFields.Map, "Outlets with their cables.", "{K-01..K-12: {from: cupboard, to: reception, length: 31 m}}");

    private static readonly Field<IReadOnlyList<Entry<EndpointKey, EndpointDraft>>> Endpoints = new(
        "endpoints", () => EndpointFields.Map, "What is connected, one by one or counted.", "{ap-1: {model: hazel, drop: K-01}, 12 x phone: {near: reception}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Partition>>> Partitions = new(
        "partitions", () => PartitionFields.Map, "Walls between spaces, as far as sound goes through them.", "{back-wall: {between: [reception, kennels], area: 14 m2, reduction: 38 dB}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Screen>>> Screens = new(
        "screens", () => ScreenFields.Map, "Desks, counters and screens behind whose edge something stands.", "{counter: {in: reception, kind: screen, from: 2 x 1 x 1.1 m, to: 4 x 1 x 1.1 m}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Noise>>> Noises = new(
        "noises", () => NoiseFields.Map, "Equipment of the client's own that is heard, such as a printer.", "{copier: {in: reception, at: 4.1 x 0.5 x 0.8 m, power: 5.2 B declared}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Line>>> Lines = new(
        "lines", () => OutsideLineFields.Map, "Lines that lead out of the house with the boxes at their end, by the name that uplinks lead to.", "{line: {down: 250 Mb/s, up: 40 Mb/s, boxes: [router], boot: 3 min}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Fitting>>> Fittings = new(
        "fittings", () => FittingFields.Map, "What is in the racks already: panels, cable managers, shelves, outlets.", "{panel-1: {kind: panel, in: A, unit: 11, height: 1 U, places: 24}}");
    private static readonly Field<AddressPlan> Addresses = new("addresses", () => AddressFields.Shape, "What addresses the site may use.", "{from: 10.44.0.0/21, subnets: {phones: {for: phone, vlan: 20}}}");
    private static readonly Field<Given<Metres>> Altitude = new("altitude", () => Sensible.Altitude, "How high above the sea the building stands.", "340 m");

    /// <summary>The survey when nobody has written any.</summary>
    public static Survey None { get; } = new([], [], [], [], [], []);

    /// <summary>The survey.</summary>
    public static ObjectShape<Survey> Shape { get; } = new("survey", [Altitude, Spaces, Partitions, Listeners, Screens, Noises, Racks, Fittings, Pathways, Drops, Lines, Endpoints, Addresses], Build)
    {
        Former = new("line", "write its 'boxes' and 'boot' below 'lines', at the name that the uplink leads to, like 'lines: {line: {boxes: [router], boot: 3 min}}'"),
        IsQuiet = true,
        About = "What the building dictates, whichever design is chosen.",
    };

    private static Survey Build(Values values) => new(
        Named.Each(values.Get(Spaces), (space, name, at) => space with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Listeners), (listener, name, at) => listener with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Racks), (rack, name, at) => rack with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Pathways), (pathway, name, at) => pathway with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Drops), (drop, name, at) => drop with { Id = name, At = at }, values.Reader),
        EndpointRows.Read(values.Get(Endpoints), values.Reader))
    {
        Altitude = values.Get(Altitude),
        Partitions = Named.Each(values.Get(Partitions), (wall, name, at) => wall with { Id = name, At = at }, values.Reader),
        Screens = Named.Each(values.Get(Screens), (screen, name, at) => screen with { Id = name, At = at }, values.Reader),
        Lines = Named.Each(values.Get(Lines), (line, name, at) => line with { Id = name, At = at }, values.Reader),
        Noises = Named.Each(values.Get(Noises), (noise, name, at) => noise with { Id = name, At = at }, values.Reader),
        Fittings = Named.Each(values.Get(Fittings), (fitting, name, at) => fitting with { Id = name, At = at }, values.Reader),
        Addresses = values.Get(Addresses),
    };
}

using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What the building dictates.</summary>
internal static class SurveyFields
{
    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Space>>> Spaces = new(
        "spaces", SpaceFields.Map, "Rooms, cupboards, yards, by the name people say.", "{reception: {size: 6 x 5 x 2.7 m, kind: reception}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Listener>>> Listeners = new(
        "listeners", ListenerFields.Map, "People who must not be disturbed.", "{desk: {in: reception, at: 2.2 x 1.4 x 1.2 m, limit: 40 dB(A)}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Rack>>> Racks = new(
        "racks", RackFields.Map, "Racks and wall cabinets.", "{A: {in: cupboard, height: 12 U}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Pathway>>> Pathways = new(
        "pathways", PathwayFields.Map, "Conduits, trays and other ways of cables.", "{loft: {kind: conduit, inside: 35.1 mm}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Drop>>> Drops = new(
        "drops", DropFields.Map, "Outlets with their cables.", "{K-01..K-12: {from: cupboard, to: reception, length: 31 m}}");

    private static readonly Field<IReadOnlyList<Entry<EndpointKey, EndpointDraft>>> Endpoints = new(
        "endpoints", EndpointFields.Map, "What is connected, one by one or counted.", "{ap-1: {model: hazel, drop: K-01}, 12 x phone: {near: reception}}");

    /// <summary>The survey when nobody has written any.</summary>
    public static Survey None { get; } = new([], [], [], [], [], []);

    /// <summary>The survey.</summary>
    public static ObjectShape<Survey> Shape { get; } = new("survey", [Spaces, Listeners, Racks, Pathways, Drops, Endpoints], Build)
    {
        IsQuiet = true,
        About = "What the building dictates, whichever design is chosen.",
    };

    private static Survey Build(Values values) => new(
        Named.Each(values.Get(Spaces), (space, name, at) => space with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Listeners), (listener, name, at) => listener with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Racks), (rack, name, at) => rack with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Pathways), (pathway, name, at) => pathway with { Id = name, At = at }, values.Reader),
        Named.Each(values.Get(Drops), (drop, name, at) => drop with { Id = name, At = at }, values.Reader),
        EndpointRows.Read(values.Get(Endpoints), values.Reader));
}

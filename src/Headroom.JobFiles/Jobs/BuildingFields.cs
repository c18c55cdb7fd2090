using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What of the building a design changes. Each key stands for the one of the survey.</summary>
internal static class BuildingFields
{
    private static readonly Place Nowhere = Place.None;

    private static readonly Field<string> Cable = new("cable", Shapes.Name("a cable model"), "The cable that is laid in place of the one surveyed.", "cat6-23");
    private static readonly Field<IReadOnlyList<RunPiece>> Pieces = new(
        "pieces", () => new ListShape<RunPiece>("piece", DropFields.Piece) { IsQuiet = true }, "The whole run in pieces, in place of the one surveyed.", "[{length: 120 ft, by: loft}, {length: 40 m}]");
    private static readonly Field<RunPiece> PanelCord = new("panel cord", () => DropFields.Cord, "The cord at the closet end.", "1 m of patch-26");
    private static readonly Field<RunPiece> DeviceCord = new("device cord", () => DropFields.Cord, "The cord at the outlet end.", "2 m of patch-26");
    private static readonly Field<int> MatedPairs = new("mated pairs", () => new CountShape(0, 40), "Mated pairs of connectors along a fibre.", "2");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, DropChange>>> Drops = new(
        "drops",
        () => Named.Map("changed drop", new ObjectShape<DropChange>("changed drop", [Cable, Pieces, PanelCord, DeviceCord, MatedPairs], values => new DropChange("", Nowhere)
        {
            Cable = values.Get(Cable),
            Pieces = values.Get(Pieces),
            CordAtPanel = values.Get(PanelCord),
            CordAtDevice = values.Get(DeviceCord),
            MatedPairs = values.Maybe(MatedPairs),
        }) { About = "A drop of the survey that is laid otherwise. One that lay there already is then laid anew." }, "K-17"),
        "Drops with another cable, another way or other cords.",
        "{K-17: {cable: cat6-23}}");

    private static readonly Field<Given<Metres>> Inside = new("inside", () => Sensible.Thickness, "Inner diameter of the conduit in its place.", "35.1 mm");
    private static readonly Field<Given<SquareMetres>> Area = new("area", () => Sensible.Opening, "Inner cross-section of the tray or trunking in its place.", "90 cm2");
    private static readonly Field<string> Barrier = new(
        "barrier", () => Shapes.Words("none", "plastic", "basket", "perforated metal", "aluminium", "steel"), "What is put between it and the mains.", "steel");
    private static readonly Field<Given<Metres>> Apart = new("apart", () => Sensible.Gap, "Gap that is left between its cables and the mains.", "120 mm");
    private static readonly Field<Given<Celsius>> Ambient = new("ambient", () => Sensible.Air, "Air temperature along it then.", "28 °C");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, PathwayChange>>> Pathways = new(
        "pathways",
        () => Named.Map("changed pathway", new ObjectShape<PathwayChange>("changed pathway", [Inside, Area, Barrier, Apart, Ambient], values => new PathwayChange("", Nowhere)
        {
            Inside = values.Get(Inside),
            Area = values.Get(Area),
            Barrier = values.Get(Barrier),
            Apart = values.Get(Apart),
            Ambient = values.Get(Ambient),
        }) { About = "A pathway of the survey that is widened, moved or shut off." }, "loft"),
        "Pathways that are wider or better shut off.",
        "{loft: {inside: 35.1 mm}}");

    private static readonly Field<Given<SquareMetres>> Vents = new("vents", () => Sensible.Opening, "Free area of its vents then.", "240 cm2");
    private static readonly Field<Given<Metres>> VentsApart = new("vents apart", () => Sensible.Pull, "Height between the middles of the low and the high vents.", "1.5 m");
    private static readonly Field<Given<Decibels>> Reduction = new("reduction", () => Sensible.Loss, "Sound reduction of its walls then.", "30 dB");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, SpaceChange>>> Spaces = new(
        "spaces",
        () => Named.Map("changed space", new ObjectShape<SpaceChange>("changed space", [Vents, VentsApart, Reduction], values => new SpaceChange("", Nowhere)
        {
            Vents = values.Get(Vents),
            VentsApart = values.Get(VentsApart),
            Reduction = values.Get(Reduction),
        }) { About = "A cupboard of the survey with other vents or walls." }, "cupboard"),
        "Cupboards with other vents or walls.",
        "{cupboard: {vents: 240 cm2, vents apart: 1.5 m}}");

    private static readonly Field<Given<Decibels>> DoorReduction = new("door reduction", () => Sensible.Loss, "Sound reduction of the door then.", "32 dB");
    private static readonly Field<Given<SquareMetres>> Gap = new("gap", () => Sensible.Opening, "Area that stays open to the air.", "10 cm2");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, PartitionChange>>> Partitions = new(
        "partitions",
        () => Named.Map("changed partition", new ObjectShape<PartitionChange>("changed partition", [DoorReduction, Gap], values => new PartitionChange("", Nowhere)
        {
            DoorReduction = values.Get(DoorReduction),
            Gap = values.Get(Gap),
        }) { About = "A wall of the survey whose door is sealed or exchanged." }, "back-wall"),
        "Walls whose door is sealed or exchanged.",
        "{back-wall: {gap: 10 cm2}}");

    private static readonly Field<string> Cabinet = new("cabinet", Shapes.Name("a cabinet model"), "The cabinet in its place.", "alcove");
    private static readonly Field<Given<RackUnits>> Height = new("height", () => Sensible.Units, "Usable height then.", "18 U");
    private static readonly Field<Given<Metres>> Depth = new("depth", () => Sensible.Part, "Usable depth behind the front rails then.", "560 mm");
    private static readonly Field<Given<Kilograms>> Load = new("load", () => Sensible.Mass, "The most it may carry then.", "58 kg");
    private static readonly Field<bool> Blanked = new("blanked", Shapes.Yes, "Whether panels close its empty units.", "yes");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, RackChange>>> Racks = new(
        "racks",
        () => Named.Map("changed rack", new ObjectShape<RackChange>("changed rack", [Cabinet, Height, Depth, Load, Blanked], values => new RackChange("", Nowhere)
        {
            Cabinet = values.Get(Cabinet),
            Height = values.Get(Height),
            Depth = values.Get(Depth),
            Load = values.Get(Load),
            Blanked = values.Maybe(Blanked),
        }) { About = "A rack of the survey in whose place another stands." }, "A"),
        "Racks in whose place others stand.",
        "{A: {cabinet: alcove, height: 9 U, depth: 436 mm}}");

    private static readonly Field<Given<BitsPerSecond>> Down = new("down", () => Sensible.DataFlow, "What it gives towards the house then.", "500 Mb/s");
    private static readonly Field<Given<BitsPerSecond>> Up = new("up", () => Sensible.DataFlow, "What it takes from the house then.", "100 Mb/s");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, LineChange>>> Lines = new(
        "lines",
        () => Named.Map("changed line", new ObjectShape<LineChange>("changed line", [Down, Up], values => new LineChange("", Nowhere) { Down = values.Get(Down), Up = values.Get(Up) })
        {
            About = "A line of the survey with a larger contract.",
        }, "line"),
        "Lines with a larger contract.",
        "{line: {up: 100 Mb/s}}");

    private static readonly Field<string> DeviceModel = new("model", Shapes.Name("an endpoint model"), "The model in its place.", "pipit");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, EndpointChange>>> Endpoints = new(
        "endpoints",
        () => Named.Map("changed endpoint", new ObjectShape<EndpointChange>("changed endpoint", [DeviceModel, TrafficFields.Traffic], values => new EndpointChange("", Nowhere) { Model = values.Get(DeviceModel), Traffic = values.Get(TrafficFields.Traffic) })
        {
            About = "An endpoint of the survey that is another model, or is set otherwise.",
        }, "cam-1"),
        "Endpoints that are other models or are set otherwise, such as cameras to a lower rate.",
        "{cam-1: {traffic: {stream: 4 Mb/s}}}");

    /// <summary>The change.</summary>
    public static ObjectShape<BuildingChange> Shape { get; } = new("building change", [Drops, Pathways, Spaces, Partitions, Racks, Lines, Endpoints], Build)
    {
        IsQuiet = true,
        About = "What of the surveyed building a design changes. What it does not say stays as surveyed.",
    };

    private static BuildingChange Build(Values values) => new()
    {
        Drops = Named.Each(values.Get(Drops), (change, name, at) => change with { Id = name, At = at }, values.Reader),
        Pathways = Named.Each(values.Get(Pathways), (change, name, at) => change with { Id = name, At = at }, values.Reader),
        Spaces = Named.Each(values.Get(Spaces), (change, name, at) => change with { Id = name, At = at }, values.Reader),
        Partitions = Named.Each(values.Get(Partitions), (change, name, at) => change with { Id = name, At = at }, values.Reader),
        Racks = Named.Each(values.Get(Racks), (change, name, at) => change with { Id = name, At = at }, values.Reader),
        Lines = Named.Each(values.Get(Lines), (change, name, at) => change with { Id = name, At = at }, values.Reader),
        Endpoints = Named.Each(values.Get(Endpoints), (change, name, at) => change with { Id = name, At = at }, values.Reader),
    };
}

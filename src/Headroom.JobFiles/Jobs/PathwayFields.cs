using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Conduits, trays and other ways of cables.</summary>
internal static class PathwayFields
{
    private static readonly Field<string> Kind = new("kind", Shapes.Words("conduit", "tray", "trunking", "ceiling"), "What it is.", "conduit") { IsRequired = true };
    private static readonly Field<Given<Metres>> Inside = new("inside", () => Sensible.Thickness, "Inner diameter of a conduit.", "35.1 mm");
    private static readonly Field<Given<SquareMetres>> Area = new("area", () => Sensible.Opening, "Inner cross-section of a tray or trunking.", "60 cm2");

    private static readonly Field<IReadOnlyList<LyingCables>> Already = new(
        "already",
        new EitherShape<IReadOnlyList<LyingCables>>(
            (node => node is YamlScalar { Text: "none" }, new As<string, IReadOnlyList<LyingCables>>(Shapes.Words("none"), (_, _) => [])),
            (_ => true, new ListShape<LyingCables>("kind", new LyingCablesShape()) { OrOne = true })),
        "Cables that lie in it already, as number x thickness.",
        "4 x 6.1 mm");

    private static readonly Field<IReadOnlyList<MainsCircuits>> Mains = new(
        "mains beside",
        new EitherShape<IReadOnlyList<MainsCircuits>>(
            (node => node is YamlScalar { Text: "none" }, new As<string, IReadOnlyList<MainsCircuits>>(Shapes.Words("none"), (_, _) => [])),
            (_ => true, new ListShape<MainsCircuits>("kind", new MainsCircuitsShape()) { OrOne = true })),
        "Mains circuits beside it.",
        "3 circuits of 16 A");

    private static readonly Field<string> Barrier = new("barrier", Shapes.Words("none", "plastic", "basket", "perforated metal", "aluminium", "steel"), "What lies between it and the mains.", "none");
    private static readonly Field<Given<Celsius>> Ambient = new("ambient", () => Sensible.Air, "Air temperature along it.", "45 °C");

    private static readonly Field<Given<Metres>> Apart = new("apart", () => Sensible.Gap, "Gap between its cables and the mains beside it.", "60 mm");
    private static readonly Field<Given<Metres>> LongestPull = new("longest pull", () => Sensible.Pull, "The longest stretch between two points from which a cable can be pulled.", "26 m");
    private static readonly Field<int> Bends = new("bends", new CountShape(0, 20), "The most right-angle bends between two such points.", "2");
    private static readonly Field<Given<Metres>> BendRadius = new("bend radius", () => Sensible.Gap, "Radius of its tightest bend.", "160 mm");

    /// <summary>The pathways by name.</summary>
    public static MapShape<IReadOnlyList<string>, Pathway> Map { get; } = Named.Map(
        "pathway",
        new ObjectShape<Pathway>("pathway", [Kind, Inside, Area, Already, Mains, Barrier, Apart, Ambient, LongestPull, Bends, BendRadius], Build) { About = "A way that cables take together." },
        "loft");

    private static Pathway Build(Values values) => new(
        "",
        values.Must(Kind),
        values.Get(Inside),
        values.Get(Area),
        values.Get(Already),
        values.Get(Mains),
        values.Get(Barrier),
        values.Get(Ambient),
        values.At)
    {
        Apart = values.Get(Apart),
        LongestPull = values.Get(LongestPull),
        Bends = values.Maybe(Bends),
        BendRadius = values.Get(BendRadius),
    };
}

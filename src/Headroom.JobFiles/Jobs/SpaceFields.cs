using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Rooms, cupboards, yards.</summary>
internal static class SpaceFields
{
    private static readonly Field<Given<Size>> Size = new("size", () => Boxes.Room, "Inner length, width and height.", "6 x 5 x 2.7 m");

    private static readonly Field<string> Kind = new(
        "kind",
        Shapes.Words(
            "private office", "open office", "meeting room", "reception", "classroom", "treatment room", "workroom", "corridor", "cupboard",
            "plant room", "loft", "outdoors", "home", "shop", "storeroom"),
        "What kind of room it is.",
        "reception");

    private static readonly Field<string> Surfaces = new("surfaces", Shapes.Words("hard", "average", "soft"), "How its surfaces take sound.", "average");
    private static readonly Field<Given<Seconds>> Reverberation = new("reverberation", () => Sensible.Reverberation, "Measured reverberation time T60.", "0.6 s");
    private static readonly Field<Given<SoundPressure>> Background = new("background", () => Sensible.Loudness, "Sound level with all equipment off.", "39 dB(A) measured");

    private static readonly Field<IReadOnlyDictionary<string, Given<Celsius>>> Temperature = new(
        "temperature",
        new EitherShape<IReadOnlyDictionary<string, Given<Celsius>>>(
            (node => node is YamlMap, new As<IReadOnlyList<Entry<string, Given<Celsius>>>, IReadOnlyDictionary<string, Given<Celsius>>>(
                new MapShape<string, Given<Celsius>>("", Shapes.Name("a case"), Sensible.Air) { KeyExample = "summer", ThingExample = "28 °C" },
                (cases, _) => cases.ToDictionary(entry => entry.Key, entry => entry.Value))),
            (_ => true, new As<Given<Celsius>, IReadOnlyDictionary<string, Given<Celsius>>>(
                Sensible.Air, (value, _) => new Dictionary<string, Given<Celsius>> { ["usual"] = value }))),
        "Air temperature, or one for each case that people name.",
        "{weekday: 24 °C, summer: 28 °C, weekend: 32 °C}");

    private static readonly Field<string> Floor = new("floor", Shapes.Text, "The floor it lies on.", "ground floor");
    private static readonly Field<Given<Spot>> Corner = new("corner", () => Boxes.Corner, "Where its corner lies in the plan of the building.", "12 x 4.5 m");
    private static readonly Field<string> Walls = new("walls", Shapes.Text, "What the walls of a cupboard are made of.", "16 mm board");

    private static readonly Field<IReadOnlyList<string>> Exposed = new(
        "exposed",
        new ListShape<string>("face", Shapes.Words("front", "back", "left", "right", "sides", "top", "bottom")),
        "The faces of a cupboard that touch the air around it.",
        "[front, sides, top]");

    private static readonly Field<Given<SquareMetres>> Vents = new(
        "vents",
        new EitherShape<Given<SquareMetres>>(
            (node => node is YamlScalar { Text: "none" }, new As<string, Given<SquareMetres>>(Shapes.Words("none"), NoVents)),
            (_ => true, Sensible.Opening)),
        "Free area of the vents of a cupboard.",
        "120 cm2");

    private static readonly Field<Given<Metres>> VentsApart = new("vents apart", () => Sensible.Pull, "Height between the middles of the low and the high vents.", "1.6 m");

    private static readonly Field<string> Beside = new("beside", Shapes.Name("a space"), "The space that the faces of a cupboard look into.", "reception");

    private static readonly Field<Given<Decibels>> Reduction = new("reduction", () => Sensible.Loss, "Sound reduction of the walls of a cupboard.", "25 dB");

    /// <summary>The spaces by name.</summary>
    public static MapShape<IReadOnlyList<string>, Space> Map { get; } = Named.Map(
        "space",
        new ObjectShape<Space>(
            "space",
            [Size, Kind, Surfaces, Reverberation, Background, Temperature, Floor, Corner, Walls, Exposed, Vents, VentsApart, Reduction, Beside],
            Build) { About = "A room, a cupboard, a yard: wherever something or somebody stands. The last six keys are for a cupboard." },
        "reception");

    private static Space Build(Values values) => new(
        "",
        values.Get(Size),
        values.Get(Kind),
        values.Get(Surfaces),
        values.Get(Reverberation),
        values.Get(Background),
        values.Get(Temperature) ?? new Dictionary<string, Given<Celsius>>(),
        values.Get(Floor),
        values.Get(Corner),
        EnclosureOf(values),
        values.At);

    private static Enclosure? EnclosureOf(Values values) => values.Has(Walls) || values.Has(Exposed) || values.Has(Vents) || values.Has(VentsApart) || values.Has(Reduction) || values.Has(Beside)
        ? new Enclosure(values.Get(Walls), values.List(Exposed), values.Get(Vents), values.Get(Beside)) { Reduction = values.Get(Reduction), VentsApart = values.Get(VentsApart) }
        : null;

    private static Given<SquareMetres> NoVents(string word, YamlNode node) => new(new SquareMetres(0), word, Origin.Unstated, null, node.At);
}

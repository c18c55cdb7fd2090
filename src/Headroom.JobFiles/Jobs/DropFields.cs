using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Outlets with their cables.</summary>
internal static class DropFields
{
    private static readonly Field<Given<Metres>> Length = new("length", () => Sensible.Run, "Length of the cable.", "31 m");
    private static readonly Field<string> Cable = new("cable", Shapes.Name("a cable model"), "The cable, by its model in the catalogue.", "cat6-23");
    private static readonly Field<Given<Celsius>> Ambient = new("ambient", () => Sensible.Air, "Air temperature around the cable.", "28 °C");
    private static readonly Field<Given<Pieces>> Bundle = new(
        "bundle",
        new As<int, Given<Pieces>>(new CountShape(1, 1000), (count, node) => new Given<Pieces>(new Pieces(count), ((YamlScalar)node).Text, Origin.Unstated, null, node.At)),
        "How many cables are tied together with it, itself included.",
        "12");

    private static readonly Field<string> By = new("by", Shapes.Name("a pathway"), "The pathway it takes.", "loft");

    /// <summary>A stretch of a run.</summary>
    public static ObjectShape<RunPiece> Piece { get; } = new("piece", [Length, Cable, Ambient, Bundle, By], PieceOf)
    {
        About = "A stretch of a run whose surroundings are the same from end to end. What it does not say, the drop says.",
    };

    /// <summary>A cord.</summary>
    public static Shape<RunPiece> Cord { get; } = new EitherShape<RunPiece>((node => node is YamlMap, Piece), (_ => true, new CordShape()));

    private static readonly Field<string> From = new("from", Shapes.Name("a space"), "The space where the cable starts.", "cupboard") { IsRequired = true };
    private static readonly Field<string> To = new("to", Shapes.Name("a space"), "The space where the outlet is.", "reception");

    private static readonly Field<IReadOnlyList<RunPiece>> Pieces = new(
        "pieces",
        new ListShape<RunPiece>("piece", Piece) { IsQuiet = true },
        "The run in pieces, from the closet outwards, where the surroundings differ; then 'length' is left out.",
        "[{length: 120 ft, ambient: 45 °C, by: loft}, {length: 40 m, ambient: 15 °C}]");

    private static readonly Field<RunPiece> PanelCord = new("panel cord", Cord, "The cord at the closet end.", "1 m of patch-26");
    private static readonly Field<RunPiece> DeviceCord = new("device cord", Cord, "The cord at the outlet end.", "2 m of patch-26");

    private static readonly Field<bool> Existing = new("existing", Shapes.Yes, "Whether it lies there already, so that no cable is bought for it.", "yes");
    private static readonly Field<int> MatedPairs = new("mated pairs", new CountShape(0, 40), "Mated pairs of connectors along a fibre; without it one at each end is taken.", "2");
    private static readonly Field<int> Splices = new("splices", new CountShape(0, 100), "Splices along a fibre; without it none.", "4");

    /// <summary>The drops by name.</summary>
    public static MapShape<IReadOnlyList<string>, Drop> Map { get; } = Named.Map(
        "drop",
        new ObjectShape<Drop>("drop", [From, To, Length, Cable, Ambient, Bundle, By, Pieces, PanelCord, DeviceCord, Existing, MatedPairs, Splices], Build)
        {
            About = "An outlet and the cable to it. Alike ones are written once: `K-01..K-12: {...}`.",
        },
        "K-01");

    private static Drop Build(Values values)
    {
        var whole = PieceOf(values);
        if (values.Entry(Length) is { } length && values.Entry(Pieces) is { } several)
            RefuseBoth(values, length, several);
        IReadOnlyList<RunPiece> pieces = values.Get(Pieces) is { Count: > 0 } list ? [.. list.Select(piece => Over(piece, whole))] : [whole];
        return new Drop("", values.Must(From), values.Get(To), pieces, values.Get(PanelCord), values.Get(DeviceCord), values.At)
        {
            Existing = values.Maybe(Existing) ?? false,
            MatedPairs = values.Maybe(MatedPairs),
            Splices = values.Maybe(Splices),
        };
    }

    private static RunPiece PieceOf(Values values) =>
        new(values.Get(Length), values.Get(Cable), values.Get(Ambient), values.Get(Bundle), values.Get(By));

    private static RunPiece Over(RunPiece piece, RunPiece whole) => new(
        piece.Length, piece.Cable ?? whole.Cable, piece.Ambient ?? whole.Ambient, piece.Bundle ?? whole.Bundle, piece.By ?? whole.By);

    private static void RefuseBoth(Values values, YamlEntry length, YamlEntry several) => values.Reader.Refuse(
        Slips.Excluding,
        (length.Key.Start > several.Key.Start ? length : several).Key.At,
        $"{values.Reader.Name} has 'length' and 'pieces'",
        "one of the two",
        "write the length of each piece and take 'length' out, or the other way round");
}

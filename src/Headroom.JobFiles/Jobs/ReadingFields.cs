using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>What was measured.</summary>
internal static class ReadingFields
{
    // An instrument may show less than nothing; beyond this it is a slip whatever was measured.
    private static readonly Bounds Any = new(-1e12, 1e12);

    private static readonly Field<string> What = new("what", Shapes.Words([.. ReadingKinds.All.Keys]), "What was measured.", "sound") { IsRequired = true };
    private static readonly Field<string> At = new("at", Shapes.Text, "The thing or spot it was measured at.", "sw-1/5") { IsRequired = true };
    private static readonly Field<YamlScalar> Value = new("value", new WrittenShape("a number with its unit"), "The value with its unit, and its spread where it is known.", "47.6 ± 1.5 dB(A)") { IsRequired = true };
    private static readonly Field<string> With = new("with", Shapes.Text, "The instrument.", "class 2 meter");
    private static readonly Field<bool> Calibrated = new("calibrated", Shapes.Yes, "Whether the instrument is calibrated.", "yes");
    private static readonly Field<bool> AtMost = new("at most", Shapes.Yes, "Whether the value is only known to be no more than this.", "no");
    private static readonly Field<DateOnly> On = new("on", Shapes.Day, "The day.", "2026-11-14");
    private static readonly Field<string> While = new("while", Shapes.Text, "The conditions, in words or as a state such as typical, night or restart.", "sw-1 level 2");
    private static readonly Field<Given<SoundPressure>> Background = new("background", () => Sensible.Loudness, "The background of a sound reading.", "38.9 dB(A)");
    private static readonly Field<Given<Metres>> Distance = new("distance", () => Sensible.Distance, "How far from its source a sound was taken.", "1 m");
    private static readonly Field<string> Method = new("method", Shapes.Text, "How it was taken, such as the reference method of a fibre tester.", "one-cord reference");
    private static readonly Field<string> Direction = new("direction", Shapes.Text, "From which end it was taken.", "from the closet");
    private static readonly Field<string> Pair = new("pair", Shapes.Words("1-2", "3-6", "4-5", "7-8"), "The pair of the cable, as on the plug.", "1-2");

    /// <summary>A reading.</summary>
    public static ObjectShape<Reading> Shape { get; } = new(
        "reading", [What, At, Value, With, Calibrated, AtMost, On, While, Background, Distance, Method, Direction, Pair], Build)
    {
        About = "A measured value with its instrument, place and time.",
    };

    /// <summary>The readings.</summary>
    public static ListShape<Reading> List { get; } = new("reading", Shape) { IsQuiet = true };

    private static Reading? Build(Values values)
    {
        var what = values.Must(What);
        var written = values.Must(Value);
        var (units, kept) = ReadingKinds.All[what];
        Measurement? measured;
        using (values.Reader.Into("value", Value.Example))
            measured = QuantityWords.Measure(written, units, Any, (values.Reader, $"{units.What} in {units.Symbols}"));
        if (measured is not { } found)
            return null;
        var unit = units.Find(kept)!;
        return Make(values, (what, unit, written.Text), unit.FromBase(found.Value), Spread(found, unit));
    }

    private static double? Spread(Measurement found, Unit unit) =>
        found.PlusMinus is { } spread ? Math.Abs(unit.FromBase(found.Value + spread) - unit.FromBase(found.Value)) : null;

    private static Reading Make(Values values, (string What, Unit Unit, string Written) told, double value, double? spread) => new(
        told.What,
        values.Must(At),
        value,
        told.Unit.Symbol,
        spread,
        told.Written,
        values.Get(With),
        values.Maybe(Calibrated),
        values.Maybe(AtMost) ?? false,
        values.Maybe(On),
        values.Get(While),
        values.Get(Background)?.Value.Value,
        values.Get(Distance)?.Value.Value,
        values.Get(Method),
        values.Get(Direction),
        values.Get(Pair),
        values.At);
}

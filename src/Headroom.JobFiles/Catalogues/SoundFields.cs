using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>What is heard of a device.</summary>
internal static class SoundFields
{
    private static readonly Field<Given<SoundPower>> Power = new("power", () => Sensible.Sound, "Declared sound power level.", "3.9 B declared");
    private static readonly Field<Given<SoundPressure>> Pressure = new("pressure", () => Sensible.Loudness, "Sound pressure level at a distance, where no power level is declared.", "31 dB(A)");
    private static readonly Field<Given<Metres>> Distance = new("distance", () => Sensible.Distance, "The distance of the pressure level.", "1 m");
    private static readonly Field<Given<Celsius>> From = new("from", () => Sensible.Air, "The inlet temperature from which it runs at this level.", "30 °C");
    private static readonly Field<Given<Watts>> FromWatts = new("from watts", () => Sensible.SupplyWatts, "The port watts from which it runs at this level.", "60 W");
    private static readonly Field<Given<CubicMetresPerHour>> Flow = new("flow", () => Sensible.Flow, "The air it moves at this level, all fans together.", "14 m3/h");
    private static readonly Field<int> Fans = new("fans", new CountShape(0, 20), "How many fans it has; 0 for none.", "2");

    private static readonly Field<IReadOnlyList<Entry<int, FanLevel>>> Levels = new(
        "levels",
        new MapShape<int, FanLevel>("level", new CountShape(1, 20), new ObjectShape<FanLevel>("fan level", [Power, Pressure, Distance, BandFields.Bands, From, FromWatts, Flow], BuildLevel)) { KeyExample = "1" },
        "Its fan levels from the quietest.",
        "{1: {power: 3.9 B declared}, 2: {power: 4.6 B declared, from: 30 °C}}");

    /// <summary>The sound.</summary>
    public static Field<SoundModel> Sound { get; } = new(
        "sound",
        new ObjectShape<SoundModel>("sound", [Fans, Levels], values => new SoundModel(values.Maybe(Fans), InOrder(values))),
        "What is heard of it. A device without fans and without a figure is not silent: nobody knows.",
        "{fans: 2, levels: {1: {power: 3.9 B declared}}}");

    /// <summary>The keys that say how loud something is, without those of a fan level.</summary>
    public static IReadOnlyList<Field> OfLevel => [Power, Pressure, Distance, BandFields.Bands];

    /// <summary>One level, with its findings.</summary>
    public static FanLevel? BuildLevel(Values values)
    {
        var level = new FanLevel(0, values.Get(Power), values.Get(Pressure), values.Get(Distance), values.Get(From), values.Get(FromWatts)) { Bands = BandFields.Build(values), Flow = values.Get(Flow) };
        if (level is { Pressure: { } pressure, Distance: null })
            values.Reader.Refuse(Slips.Missing, pressure.At, $"distance of {values.Reader.Name} is not written", Sensible.Distance.InWords, "write 'distance: 1 m' beside the pressure");
        if (level is { Pressure: not null, Power: not null })
            values.Reader.Refuse(Slips.Excluding, values.Entry(Pressure)!.Key.At, $"{values.Reader.Name} has 'power' and 'pressure'", "one of the two", "keep the power; it says more");
        if (level is { Bands: not null, Power: null, Pressure: null })
            values.Reader.Refuse(Slips.Missing, level.Bands.At, $"bands of {values.Reader.Name} stand without a level", "a power, or a pressure at a distance, beside them", "write which it is: 'power: 4.7 B' or 'pressure: 36 dB(A), distance: 1 m'");
        return level;
    }

    private static IReadOnlyList<FanLevel> InOrder(Values values)
    {
        // Not by a query: ordering by a number would be compiled at each start.
        var entries = new List<Entry<int, FanLevel>>(values.List(Levels));
        entries.Sort((one, other) => one.Key.CompareTo(other.Key));
        for (var i = 0; i < entries.Count; i++)
        {
            if (entries[i].Key != i + 1)
                Refuse(entries[i].At, values.Reader, $"level {entries[i].Key} stands where level {i + 1} is expected");
            else if (i > 0)
                Check(entries[i - 1].Value, entries[i].Value, entries[i].At, values.Reader);
        }

        return [.. entries.Select(entry => entry.Value with { Level = entry.Key })];
    }

    private static void Check(FanLevel before, FanLevel level, Place at, FieldReader reader)
    {
        if (level.Power?.Value.Value < before.Power?.Value.Value || level.Pressure?.Value.Value < before.Pressure?.Value.Value)
            Refuse(at, reader, "a higher level is quieter than the one before it");
        if (level.AboveInlet?.Value.Value < before.AboveInlet?.Value.Value || level.AbovePortWatts?.Value.Value < before.AbovePortWatts?.Value.Value)
            Refuse(at, reader, "a higher level begins earlier than the one before it");
        if (level.Flow?.Value.Value < before.Flow?.Value.Value)
            Refuse(at, reader, "a higher level moves less air than the one before it");
    }

    private static void Refuse(Place at, FieldReader reader, string given) => reader.Refuse(
        ModelSlips.NotRising, at, $"{reader.Name}: {given}", "levels 1, 2, 3 ..., each at least as loud and beginning no earlier than the one before", "see whether two levels are swapped");
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Standby supplies and their battery blocks.</summary>
internal static class StandbyModelFields
{
    private static readonly Field<Given<VoltAmperes>> Apparent = new("apparent", () => Sensible.Apparent, "The most it can give in apparent power.", "900 VA");
    private static readonly Field<Given<Watts>> Real = new("real", () => Sensible.SupplyWatts, "The most it can give in real power.", "540 W");
    private static readonly Field<Given<Share>> Efficiency = new("efficiency", () => Sensible.Efficiency, "Output over what the battery gives.", "90 %");
    private static readonly Field<Given<Watts>> NoLoad = new("no load", () => Sensible.SupplyWatts, "What its converter draws from the battery with nothing connected.", "11 W");
    private static readonly Field<Given<Watts>> Recharge = new("recharge", () => Sensible.SupplyWatts, "What it takes from the mains to recharge, beside its load.", "64 W");
    private static readonly Field<string> Output = new("output", Shapes.Words("ac", "dc"), "What it gives; ac without it. A battery feed for midspans gives dc.", "ac");
    private static readonly Field<string> Battery = new("battery", Shapes.Name("a battery model"), "The battery block in it.", "galena");
    private static readonly Field<int> Blocks = new("blocks", new CountShape(1, 200), "How many blocks.", "2");

    private static readonly Field<IReadOnlyList<Entry<Given<Watts>, Given<Seconds>>>> Runtime = new(
        "runtime", Table("270 W", "14 min"), "How long it holds, by load, with new batteries.", "{270 W: 14 min, 540 W: 4.5 min}");

    private static readonly Field<int> Outlets = new("outlets", new CountShape(1, 100), "Outlets that its battery feeds.", "4");

    private static readonly Field<string> Chemistry = new("chemistry", Shapes.Words("lead", "lithium"), "Sealed lead, or lithium iron phosphate.", "lead") { IsRequired = true };
    private static readonly Field<Given<Volts>> Nominal = new("nominal", () => Sensible.LowVolts, "Nominal voltage.", "12 V") { IsRequired = true };
    private static readonly Field<Given<AmpereHours>> Capacity = new("capacity", () => Sensible.Charge, "Nominal capacity.", "9 Ah");

    private static readonly Field<IReadOnlyList<Entry<Given<Watts>, Given<Seconds>>>> Discharge = new(
        "discharge", Table("105 W", "15 min"), "How long one new block holds a constant load at 25 °C.", "{38 W: 1 h, 105 W: 15 min}");

    private static readonly Field<Given<Seconds>> Life = new("life", () => Sensible.Years, "Design life at 20 to 25 °C.", "5 years");

    /// <summary>A standby supply model.</summary>
    public static ObjectShape<StandbyModel> Standby { get; } = new(
        "standby supply model", [.. BodyFields.First, Apparent, Real, Efficiency, NoLoad, Recharge, Output, Battery, Blocks, Runtime, Outlets, SoundFields.Sound, .. BodyFields.Last], BuildStandby);

    /// <summary>A battery block model.</summary>
    public static ObjectShape<BatteryModel> Block { get; } = new(
        "battery model",
        [.. BodyFields.First, Chemistry, Nominal, Capacity, Discharge, Life, .. BodyFields.Last],
        values => new BatteryModel(
            BodyFields.Build(values),
            values.Must(Chemistry),
            values.Must(Nominal),
            values.Get(Capacity),
            [.. Rows(values, Discharge).OrderBy(point => point.Lasts.Value.Value)],
            values.Get(Life)));

    private static MapShape<Given<Watts>, Given<Seconds>> Table(string load, string lasts) => Points.Table(Sensible.SupplyWatts, Sensible.Lasts, (load, lasts));

    private static StandbyModel BuildStandby(Values values)
    {
        if (values.Get(Real) is { } real && values.Get(Apparent) is { } apparent && real.Value.Value > apparent.Value.Value)
            values.Reader.Refuse(ModelSlips.MoreThanRated, real.At, $"real of {values.Reader.Name} is '{real.Written}', apparent is '{apparent.Written}'", "no more watts than volt-amperes", "see whether the two are swapped");
        return new StandbyModel(
            BodyFields.Build(values),
            values.Get(Apparent),
            values.Get(Real),
            values.Get(Efficiency),
            values.Get(Battery),
            values.Maybe(Blocks),
            Rows(values, Runtime, "less time for more watts"))
        {
            NoLoad = values.Get(NoLoad),
            Recharge = values.Get(Recharge),
            Outlets = values.Maybe(Outlets),
            GivesDc = values.Get(Output) == "dc",
            Sound = values.Get(SoundFields.Sound),
        };
    }

    private static IReadOnlyList<RuntimePoint> Rows(Values values, Field<IReadOnlyList<Entry<Given<Watts>, Given<Seconds>>>> field, string falls = "a shorter time for more watts, never the same twice")
    {
        using var step = values.Reader.Into(field.Name);
        var rows = Points.InOrder(values.List(field), load => load.Value.Value, values.Reader);
        Points.CheckFalling(rows, lasts => lasts.Value.Value, values.Reader, falls, strictly: field == Discharge);
        return [.. rows.Select(row => new RuntimePoint(row.Key, row.Value))];
    }
}

using System.Globalization;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Endpoint models.</summary>
internal static class EndpointModelFields
{
    // Most power at the device by class 0 to 8 [W]: IEEE Std 802.3, clauses 33 and 145, from memory.
    private static readonly double[] ClassWatts = [12.95, 3.84, 6.49, 12.95, 25.5, 40, 51, 62, 71.3];

    private static readonly Field<string> Kind = new(
        "kind", Shapes.Words("phone", "access point", "camera", "door station", "radio", "switch", "other"), "What it is.", "access point") { IsRequired = true };

    private static readonly Field<OrNone<PowerIntake>> Power = new(
        "power", Removable.Of(IntakeFields.Shape), "How it takes power over the cable; none when it has a supply of its own.", "{class: 4, signature: single}") { IsRequired = true };

    private static readonly Field<IReadOnlyDictionary<string, Given<Watts>>> Draws = new(
        "draws",
        new ObjectShape<IReadOnlyDictionary<string, Given<Watts>>>("draws", DrawFields.All, DrawFields.Build),
        "What it draws at its connector, by state.",
        "{typical: 9.2 W, peak: 17 W, start: 11 W}");

    private static readonly Field<int> PortsBehind = new("ports behind", new CountShape(0, 48), "Ports it offers to others, for a small switch that is powered over the cable.", "4");

    private static readonly Field<Given<Seconds>> Boot = new("boot", () => Sensible.Boot, "How long it takes from power to being of use: a phone that rings, an access point that people find.", "48 s measured");

    /// <summary>An endpoint model.</summary>
    public static ObjectShape<EndpointModel> Shape { get; } = new(
        "endpoint model", [.. BodyFields.First, Kind, Power, Draws, Boot, PortFields.Speed, PortsBehind, TrafficFields.Traffic, TrafficFields.Radio, .. BodyFields.Last], Build);

    private static EndpointModel Build(Values values)
    {
        var power = values.Must(Power).Thing;
        var draws = values.Get(Draws) ?? new Dictionary<string, Given<Watts>>();
        CheckDraws(power, draws, values);
        return new EndpointModel(
            BodyFields.Build(values), values.Must(Kind), power, draws, values.List(PortFields.Speed), values.Maybe(PortsBehind) ?? 0)
        {
            Boot = values.Get(Boot),
            Traffic = values.Get(TrafficFields.Traffic),
            Radio = values.Get(TrafficFields.Radio),
        };
    }

    private static void CheckDraws(PowerIntake? power, IReadOnlyDictionary<string, Given<Watts>> draws, Values values)
    {
        var typical = draws.GetValueOrDefault("typical");
        var peak = draws.GetValueOrDefault("peak");
        if (peak?.Value.Value < typical?.Value.Value)
            values.Reader.Refuse(ModelSlips.PeakBelowTypical, peak!.At, $"peak of {values.Reader.Name} is '{peak.Written}', typical is '{typical!.Written}'", "a peak of at least the typical draw", "see whether the two are swapped");
        if (power is not null && draws.Count == 0)
            values.Reader.Ask(ModelSlips.NoDraws, values.Entry(Power)!.Value.At, $"{values.Reader.Name} takes power and has no draws", "at least a typical draw", "write 'draws: {typical: ..., peak: ...}', measured if nothing is declared");
        if (power?.Class is not { } wanted)
            return;
        // A dual signature is two loads, each of its class.
        var most = ClassWatts[wanted] * (power.Dual ? 2 : 1);
        foreach (var (state, draw) in draws)
        {
            if (draw.Value.Value > most)
                AskClass(values, (state, draw), (wanted, most));
        }
    }

    private static void AskClass(Values values, (string Name, Given<Watts> Draw) state, (int Class, double Watts) most) => values.Reader.Ask(
        ModelSlips.OverClass,
        state.Draw.At,
        $"{state.Name} of {values.Reader.Name} is '{state.Draw.Written}' in class {most.Class}",
        string.Create(CultureInfo.InvariantCulture, $"at most {most.Watts} W in that class"),
        "see whether class or draw is right, or write why in a remark (# ...)");
}

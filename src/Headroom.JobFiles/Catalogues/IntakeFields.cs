using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>How an endpoint takes power over the cable.</summary>
internal static class IntakeFields
{
    private static readonly Field<int> Class = new("class", new CountShape(0, 8), "The class it asks for (IEEE 802.3).", "4");
    private static readonly Field<bool> Dual = new("signature", new WordShape<bool>(("single", false), ("dual", true)), "Whether each pair of pairs carries a load of its own.", "single");
    private static readonly Field<Given<Volts>> Passive = new("passive", () => Sensible.CableVoltsRange, "The passive voltage it takes.", "20..28 V");
    private static readonly Field<Given<Volts>> Least = new("least volts", () => Sensible.CableVolts, "The least voltage at its connector while it runs; else the least of its class.", "42.5 V");
    private static readonly Field<Given<Volts>> Most = new("most volts", () => Sensible.CableVolts, "The most voltage it stands.", "57 V");
    private static readonly Field<Given<Watts>> Asks = new("asks", () => Sensible.PortWatts, "What it asks for over LLDP, at the device.", "21.3 W");
    private static readonly Field<bool> Autoclass = new("autoclass", Shapes.Yes, "Whether it takes part in Autoclass.", "yes");

    private static readonly Field<Enum> Demoted = new(
        "when demoted",
        new WordShape<Enum>(("runs", WhenDemoted.Runs), ("stays dark", WhenDemoted.StaysDark)),
        "What it does when the port grants a lower class.",
        "runs");

    private static readonly Field<Given<Farads>> Capacitance = new("capacitance", () => Sensible.Capacitance, "What its input charges at the start.", "120 µF");
    private static readonly Field<Given<Watts>> LeastDraw = new("least draw", () => Sensible.Draw, "What it draws when it does least.", "2.1 W");

    /// <summary>The intake.</summary>
    public static ObjectShape<PowerIntake> Shape { get; } = new(
        "power intake",
        [Class, Dual, Passive, Least, Most, Asks, Autoclass, Demoted, Capacitance, LeastDraw],
        values => new PowerIntake(
            values.Maybe(Class),
            values.Maybe(Dual) ?? false,
            values.Get(Passive),
            values.Get(Least),
            values.Get(Most),
            values.Get(Asks),
            values.Maybe(Autoclass) ?? false,
            (WhenDemoted?)values.Get(Demoted),
            values.Get(Capacitance),
            values.Get(LeastDraw)));
}

using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Fields;

/// <summary>How a switch hands out watts; a model has its way, and a design may say otherwise.</summary>
internal static class SettingFields
{
    /// <summary>The ways of reserving.</summary>
    public static WordShape<ReservesBy> Ways { get; } = new(
        ("class", ReservesBy.Class),
        ("port-limit", ReservesBy.PortLimit),
        ("negotiated", ReservesBy.Negotiated),
        ("measured", ReservesBy.Measured),
        ("autoclass", ReservesBy.Autoclass));

    private static readonly Field<ReservesBy> By = new("reserves-by", Ways, "What the switch sets aside for a port in use.", "class");

    private static readonly Field<AtStart> Start = new(
        "at-start",
        new WordShape<AtStart>(("class", AtStart.Class), ("port-limit", AtStart.PortLimit), ("draw", AtStart.Draw)),
        "What it sets aside for a port that has just come up, before anything is negotiated or measured.",
        "class");

    private static readonly Field<AtRefusal> Refusal = new(
        "at-refusal",
        new WordShape<AtRefusal>(("skip", AtRefusal.Skip), ("stop", AtRefusal.Stop)),
        "What it does with the ports behind one that does not fit: it skips that one, or stops there.",
        "skip");

    private static readonly Field<bool> Retries = new("retries", Shapes.Yes, "Whether a refused port is tried again when watts come free.", "yes");

    private static readonly Field<ShedOrder> Shed = new(
        "shed-order",
        new WordShape<ShedOrder>(("highest-port-first", ShedOrder.HighestPortFirst), ("lowest-port-first", ShedOrder.LowestPortFirst)),
        "Which port of the lowest priority loses its watts first.",
        "highest-port-first");

    private static readonly Field<NegotiatedCounts> Counts = new(
        "negotiated-counts",
        new WordShape<NegotiatedCounts>(("port", NegotiatedCounts.Port), ("device", NegotiatedCounts.Device)),
        "Which end's watts are set aside after negotiation: the port's, with the worst loss of the class, or the device's.",
        "port");

    /// <summary>The keys.</summary>
    public static IReadOnlyList<Field> All { get; } = [By, Start, Refusal, Retries, Shed, Counts];

    /// <summary>The setting as far as it is written.</summary>
    public static PowerSetting Build(Values values) => PowerSetting.Silent with
    {
        ReservesBy = values.Maybe(By),
        AtStart = values.Maybe(Start),
        AtRefusal = values.Maybe(Refusal),
        Retries = values.Maybe(Retries),
        ShedOrder = values.Maybe(Shed),
        NegotiatedCounts = values.Maybe(Counts),
    };
}

using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Fields;

/// <summary>How a switch hands out watts; a model has its way, and a design may say otherwise.</summary>
internal static class SettingFields
{
    /// <summary>The ways of reserving.</summary>
    public static WordShape<Enum> Ways { get; } = new(
        ("class", ReservesBy.Class),
        ("port-limit", ReservesBy.PortLimit),
        ("negotiated", ReservesBy.Negotiated),
        ("measured", ReservesBy.Measured),
        ("autoclass", ReservesBy.Autoclass));

    private static readonly Field<Enum> By = new("reserves-by", Ways, "What the switch sets aside for a port in use.", "class");

    private static readonly Field<Enum> Start = new(
        "at-start",
        new WordShape<Enum>(("class", AtStart.Class), ("port-limit", AtStart.PortLimit), ("draw", AtStart.Draw)),
        "What it sets aside for a port that has just come up, before anything is negotiated or measured.",
        "class");

    private static readonly Field<Enum> Refusal = new(
        "at-refusal",
        new WordShape<Enum>(("skip", AtRefusal.Skip), ("stop", AtRefusal.Stop)),
        "What it does with the ports behind one that does not fit: it skips that one, or stops there.",
        "skip");

    private static readonly Field<bool> Retries = new("retries", Shapes.Yes, "Whether a refused port is tried again when watts come free.", "yes");

    private static readonly Field<Enum> Shed = new(
        "shed-order",
        new WordShape<Enum>(("highest-port-first", ShedOrder.HighestPortFirst), ("lowest-port-first", ShedOrder.LowestPortFirst)),
        "Which port of the lowest priority loses its watts first.",
        "highest-port-first");

    private static readonly Field<Enum> Counts = new(
        "negotiated-counts",
        new WordShape<Enum>(("port", NegotiatedCounts.Port), ("device", NegotiatedCounts.Device)),
        "Which end's watts are set aside after negotiation: the port's, with the worst loss of the class, or the device's.",
        "port");

    /// <summary>The keys.</summary>
    public static IReadOnlyList<Field> All { get; } = [By, Start, Refusal, Retries, Shed, Counts];

    /// <summary>The setting as far as it is written.</summary>
    public static PowerSetting Build(Values values) => PowerSetting.Silent with
    {
        ReservesBy = (ReservesBy?)values.Get(By),
        AtStart = (AtStart?)values.Get(Start),
        AtRefusal = (AtRefusal?)values.Get(Refusal),
        Retries = values.Maybe(Retries),
        ShedOrder = (ShedOrder?)values.Get(Shed),
        NegotiatedCounts = (NegotiatedCounts?)values.Get(Counts),
    };
}

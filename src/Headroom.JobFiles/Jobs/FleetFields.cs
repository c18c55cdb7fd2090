using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What a firm has in the field.</summary>
internal static class FleetFields
{
    private static readonly Field<string> Model = new("model", () => Shapes.Name("a model"), "The model in the catalogue, of whichever kind.", "wren-b") { IsRequired = true };
    private static readonly Field<int> Units = new("units", () => new CountShape(0, 1_000_000), "How many are in service, at all sites.", "120");
    private static readonly Field<Given<Seconds>> Service = new("service", () => Sensible.Service, "Time in service of all of them together; failed ones up to their failure.", "240 years");
    private static readonly Field<int> Failed = new("failed", () => new CountShape(0, 100_000), "How many failed in that time.", "3");
    private static readonly Field<Given<Seconds>> HotService = new("hot service", () => Sensible.Service, "The part of that time that was spent in hot places.", "60 years");
    private static readonly Field<int> HotFailed = new("hot failed", () => new CountShape(0, 100_000), "How many of the failed stood in hot places.", "2");
    private static readonly Field<int> Spares = new("spares", () => new CountShape(0, 100_000), "How many lie on the shelf.", "1");
    private static readonly Field<Given<Seconds>> Supplier = new("supplier", () => Sensible.Lead, "How long until a new one comes.", "14 d");
    private static readonly Field<Given<Share>> Certainty = new("certainty", () => Sensible.Certainty, "The probability with which the shelf is to last until then; 95 % without it.", "95 %");

    /// <summary>The fleet.</summary>
    public static ListShape<FleetRow> All { get; } = new(
        "fleet row",
        new ObjectShape<FleetRow>("fleet row", [Model, Units, Service, Failed, HotService, HotFailed, Spares, Supplier, Certainty], Build)
        {
            About = "What the firm has of one model in the field, at all of its sites, and what became of it.",
        }) { IsQuiet = true };

    private static FleetRow Build(Values values) => new(
        values.Must(Model),
        values.Maybe(Units),
        values.Get(Service),
        values.Maybe(Failed),
        values.Get(HotService),
        values.Maybe(HotFailed),
        values.Maybe(Spares),
        values.Get(Supplier),
        values.Get(Certainty),
        values.At);
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What a job took in the end.</summary>
internal static class AfterwardsFields
{
    private static readonly Field<Given<Seconds>> Hours = new("hours", () => Sensible.Worked, "Hours worked.", "41 h");
    private static readonly Field<Given<Money>> Material = new("material", new MoneyShape(), "What the goods cost in the end.", "2310 EUR");
    private static readonly Field<int> Visits = new("visits", new CountShape(0, 1000), "How often somebody went there.", "4");
    private static readonly Field<Given<Money>> Visit = new("visit", new MoneyShape(), "What one visit costs besides its hours.", "38 EUR");
    private static readonly Field<IReadOnlyList<ExtraLine>> Variations = new("variations", () => LineFields.List, "What was ordered on the way.", "[{what: one more outlet, cost: 41 EUR, price: 96 EUR}]");

    /// <summary>The keys.</summary>
    public static ObjectShape<Afterwards> Shape { get; } = new(
        "what the job took",
        [Hours, Material, Visits, Visit, Variations],
        values => new Afterwards(values.Get(Hours), values.Get(Material), values.Maybe(Visits), values.Get(Visit), values.List(Variations)));
}

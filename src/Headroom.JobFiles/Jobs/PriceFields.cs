using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What goods cost in a job.</summary>
internal static class PriceFields
{
    private static readonly Field<string> Model = new("model", Shapes.Name("a model"), "The model in the catalogue, of whichever kind.", "wren-b") { IsRequired = true };
    private static readonly Field<Given<Money>> Cost = new("cost", new MoneyShape(), "What one costs.", "212 EUR") { IsRequired = true };
    private static readonly Field<string> Supplier = new("supplier", Shapes.Text, "Who sells it.", "Hollow Lane Supplies");
    private static readonly Field<DateOnly> On = new("on", Shapes.Day, "The day on which the price was right.", "2026-11-20");
    private static readonly Field<string> List = new("list", Shapes.Text, "The list it stands in.", "autumn list");

    /// <summary>The prices.</summary>
    public static ListShape<Price> All { get; } = new(
        "price",
        new ObjectShape<Price>(
            "price",
            [Model, Cost, Supplier, On, List],
            values => new Price(values.Must(Model), values.Must(Cost), values.Get(Supplier), values.Maybe(On), values.Get(List), values.At))
        {
            About = "What a model of the catalogue costs in this job, in place of what the catalogue says.",
        }) { IsQuiet = true };
}

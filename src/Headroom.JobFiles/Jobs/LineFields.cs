using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Lines of an offer that do not follow from the design.</summary>
internal static class LineFields
{
    private static readonly Field<string> What = new("what", Shapes.Text, "What it is, as the client reads it.", "skip for the old cable") { IsRequired = true };
    private static readonly Field<int> Count = new("count", new CountShape(1, 100_000), "How many; one without it.", "2");
    private static readonly Field<Given<Money>> Cost = new("cost", new MoneyShape(), "What one costs the firm.", "90 EUR");
    private static readonly Field<Given<Money>> Price = new("price", new MoneyShape(), "What one is charged; without it the margin says so.", "125 EUR");
    private static readonly Field<string> Tax = new("tax", Shapes.Name("a group of tax"), "The group of its tax.", "standard");
    private static readonly Field<string> Option = new("option", Shapes.Name("an option"), "The option it belongs to; the offer itself without it.", "second radio");

    /// <summary>The lines.</summary>
    public static ListShape<ExtraLine> List { get; } = new(
        "line",
        new ObjectShape<ExtraLine>(
            "line of the offer",
            [What, Count, Cost, Price, Tax, Option],
            values => new ExtraLine(values.Must(What), values.Maybe(Count) ?? 1, values.Get(Cost), values.Get(Price), values.Get(Tax), values.Get(Option), values.At)))
    {
        IsQuiet = true,
    };
}

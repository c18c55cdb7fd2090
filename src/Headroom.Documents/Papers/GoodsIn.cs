using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Papers;

/// <summary>The goods-in list: what should arrive, and room for what did, with the numbers and days that a claim needs later.</summary>
internal static class GoodsIn
{
    /// <summary>What stands on it; null when the design brings nothing.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var (numbered, others) = input.Results.Money is { } money ? OfOffer(input, money) : OfDesign(input);
        if (numbered.Count + others.Count == 0)
            return null;
        return
        [
            new Facts([("site", input.Job.Name), ("design", input.Ledger.Design), ("taken in by", ""), ("date", "")]),
            .. numbered.Count == 0 ? [] : new Block[]
            {
                new Heading("With a number of their own"),
                new Table(
                    [Written.TickColumn, new("item"), new("supplier") { Least = 70 }, new("serial number") { Least = 110, Grows = true }, new("hardware address") { Least = 90 }, new("arrived") { Least = 56 }, new("invoice, its date") { Least = 90 }, new("warranty begins") { Least = 66 }, new("box whole, parts there") { Least = 80 }],
                    numbered),
            },
            .. others.Count == 0 ? [] : new Block[]
            {
                new Heading("By count"),
                new Table([Written.TickColumn, new("item") { Grows = true }, new("supplier") { Least = 70 }, new("ordered", Anchor), new("arrived") { Least = 60 }, new("missing, damaged") { Least = 120 }, new("invoice, its date") { Least = 90 }, new("initials") { Least = 44 }], others),
            },
            new Words("A warranty often runs from the day of the invoice, not of the installation: write both. Keep the boxes of units until the end of the soak.", Canvas.Lettering.Label),
        ];
    }

    private static Canvas.Anchor Anchor => Canvas.Anchor.End;

    private static (List<Row> Numbered, List<Row> Others) OfOffer(PaperInput input, MoneyResult money)
    {
        List<Row> numbered = [], others = [];
        foreach (var order in SupplierOrder.Of(money))
        {
            foreach (var line in order.Lines)
            {
                if (BillOfMaterials.HasSerial(input.Results.Bound, line))
                    numbered.AddRange(Enumerable.Range(0, (int)line.Count).Select(_ => Written.ToTick(BillOfMaterials.Item(line), order.Supplier ?? "") with { Least = Written.HandRow }));
                else
                    others.Add(Written.ToTick(BillOfMaterials.Item(line), order.Supplier ?? "", BillOfMaterials.Count(line)) with { Least = Written.HandRow });
            }
        }

        return (numbered, others);
    }

    // Without an offer: what the design places and the survey hangs on it.
    private static (List<Row> Numbered, List<Row> Others) OfDesign(PaperInput input)
    {
        List<Row> numbered =
        [
            .. PlacedUnit.Of(input).OrderBy(unit => unit.Body?.Id ?? "~", StringComparer.Ordinal).Select(unit => Written.ToTick(unit.Body?.Id ?? "model not said") with { Least = Written.HandRow }),
            .. input.Results.Bound.Endpoints.Where(endpoint => endpoint.Model.Kind != "other").OrderBy(endpoint => endpoint.Model.Id, StringComparer.Ordinal).Select(endpoint => Written.ToTick(endpoint.Model.Id) with { Least = Written.HandRow }),
        ];
        return (numbered, [.. input.Results.Cabling.Totals.Where(total => !total.IsFibre).Select(total => Written.ToTick($"cable {total.Cable}", "", (total.NotKnown.Count > 0 ? "at least " : "") + Numbers.Show(total.Boxes) + (total.Boxes == 1 ? " box" : " boxes")) with { Least = Written.HandRow })]);
    }
}

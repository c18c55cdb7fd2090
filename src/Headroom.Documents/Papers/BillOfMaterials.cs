using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Papers;

/// <summary>What is bought, with what it costs and what it is charged; and the same as orders, a sheet a supplier. For the firm's own eyes.</summary>
internal static class BillOfMaterials
{
    /// <summary>The bill; null when the job says nothing of money.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Results.Money is not { } money || SupplierOrder.Of(money) is not { Count: > 0 } orders)
            return null;
        var rows = new List<Row>();
        foreach (var order in orders)
        {
            foreach (var line in order.Lines)
            {
                rows.Add(Row.Of(
                    Numbers.Show(rows.Count + 1), Item(line), About(input.Results.Bound, line), Count(line), order.Supplier ?? "?",
                    Amount(line.Cost, money), Amount(line.Net, money), HasSerial(input.Results.Bound, line) ? "yes" : "", Spares(input, line)));
            }
        }

        rows.Add(Sum("goods", orders.SelectMany(order => order.NotKnown).Any(), SupplierOrder.Together(orders), money));
        rows.Add(Sum("with work and what is put aside for coming back", money.NotKnown.Any(line => line.Cost is null), money.Cost, money));
        return
        [
            new Facts([("site", input.Job.Name), ("design", input.Ledger.Design), ("ordered on", ""), ("cash needed before the deposit", "")]),
            new Table(
                [
                    new("no.", Anchor.End), new("item"), new("what it is") { Grows = true }, new("count", Anchor.End), new("supplier"), new($"cost [{money.Currency}]", Anchor.End), new($"price [{money.Currency}]", Anchor.End),
                    new("serial no."), new("on the shelf"), new("stock, days") { Least = 60 },
                ],
                rows),
            .. Questions(money),
        ];
    }

    /// <summary>The orders; null when the job says nothing of money.</summary>
    public static IReadOnlyList<Block>? Orders(PaperInput input)
    {
        if (input.Results.Money is not { } money || SupplierOrder.Of(money) is not { Count: > 0 } orders)
            return null;
        return [.. orders.SelectMany((order, i) => Order(input, money, order).Prepend(i > 0 ? new NewSheet() : new Gap(0)))];
    }

    private static IEnumerable<Block> Order(PaperInput input, MoneyResult money, SupplierOrder order)
    {
        yield return new Heading(order.Supplier ?? "Supplier not written yet");
        yield return new Facts([("order number", ""), ("date", ""), ("our reference", $"{input.Job.Name}, {input.Ledger.Design}"), ("deliver to", ""), ("wanted until", ""), ("their quote", "")]);
        if (order.Supplier is null)
            yield return new Words("Who sells these? The file of prices has a place for it beside each.", Lettering.Body with { Face = Face.Slanted });
        yield return new Words("On confirmation: exactly the model and supply of the design, ears and mains cord for the country in the box, direction of air, reach and wavelength of modules. A substitute is studied with all limits before it is accepted.", Lettering.Label);
        yield return new Table(
            [new("no.", Anchor.End), new("item"), new("what it is") { Grows = true }, new("count", Anchor.End), new($"together [{money.Currency}]", Anchor.End), new("confirmed: same model, price, day") { Least = 120 }],
            [
                .. order.Lines.Select((line, i) => Row.Of(Numbers.Show(i + 1), Item(line), About(input.Results.Bound, line), Count(line), Amount(line.Cost, money)) with { Least = Written.HandRow }),
                new Row([new(""), new("together, without tax"), new(""), new(""), new(Least(order.NotKnown.Count > 0) + QuotationLines.Amount(order.Cost, money.Offer.Terms))]) { IsSum = true },
            ]);
        if (order.NotKnown.Count > 0)
            yield return new Words($"In no sum: {Written.List([.. order.NotKnown.Select(line => line.What)])}. What {(order.NotKnown.Count == 1 ? "does it" : "do they")} cost?");
    }

    private static IEnumerable<Block> Questions(MoneyResult money)
    {
        if (SupplierOrder.Of(money).Any(order => order.Supplier is null))
            yield return new Words("Who sells what has a question mark? The file of prices has a place for it beside each.", Lettering.Body with { Face = Face.Slanted });
        foreach (var question in money.Lines.Where(line => line is { IsLabour: false, Option: null, Question: not null }).Select(line => line.Question!).Distinct())
            yield return new Words(Written.Asked(question), Lettering.Body with { Face = Face.Slanted });
    }

    /// <summary>What a line is called on a list: with its supply where it has one, and nothing said twice.</summary>
    internal static string Item(PricedLine line) => line.What.Contains(',', StringComparison.Ordinal) || line.What.StartsWith("cable ", StringComparison.Ordinal) ? line.What : SupplierOrder.ModelOf(line);

    /// <summary>A count with its unit.</summary>
    internal static string Count(PricedLine line) => $"{Numbers.Show((double)line.Count)} {line.CountUnit}".Trim();

    /// <summary>What a line is, in the words of the catalogue; empty when it has none.</summary>
    internal static string About(BoundDesign bound, PricedLine line) => BodyOf(bound.Catalogue, SupplierOrder.ModelOf(line))?.About ?? "";

    /// <summary>True for what has a number of its own.</summary>
    internal static bool HasSerial(BoundDesign bound, PricedLine line)
    {
        var (model, catalogue) = (SupplierOrder.ModelOf(line), bound.Catalogue);
        return catalogue.Switches.ContainsKey(model) || catalogue.Injectors.ContainsKey(model) || catalogue.Standby.ContainsKey(model) || catalogue.Modules.ContainsKey(model) || catalogue.Endpoints.ContainsKey(model);
    }

    private static Body? BodyOf(Catalogue catalogue, string model) =>
        catalogue.Switches.GetValueOrDefault(model)?.Body ?? catalogue.Injectors.GetValueOrDefault(model)?.Body ?? catalogue.Standby.GetValueOrDefault(model)?.Body ?? catalogue.Modules.GetValueOrDefault(model)?.Body
        ?? catalogue.Endpoints.GetValueOrDefault(model)?.Body ?? catalogue.Cables.GetValueOrDefault(model)?.Body ?? catalogue.Fibres.GetValueOrDefault(model)?.Body;

    private static string Spares(PaperInput input, PricedLine line) => input.Job.Fleet.FirstOrDefault(row => row.Model == SupplierOrder.ModelOf(line)) is { } row ? row.Spares is { } spares ? Numbers.Show(spares) : "?" : "";

    private static Row Sum(string what, bool isPart, decimal amount, MoneyResult money) =>
        new([new(""), new(what) { Span = 4 }, new(Least(isPart) + QuotationLines.Amount(amount, money.Offer.Terms))]) { IsSum = true };

    private static string Amount(decimal? amount, MoneyResult money) => amount is { } known ? QuotationLines.Amount(known, money.Offer.Terms) : "?";

    private static string Least(bool isPart) => isPart ? "at least " : "";
}

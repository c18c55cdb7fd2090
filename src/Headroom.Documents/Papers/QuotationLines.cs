using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Papers;

/// <summary>The lines of an offer as the client reads them: price, never cost.</summary>
internal static class QuotationLines
{
    /// <summary>The lines of one design and of its options.</summary>
    public static IEnumerable<Block> Of(PaperInput design, bool named)
    {
        if (design.Results.Money is not { } money)
            yield break;
        yield return new Heading(named ? $"Design {design.Ledger.Design}" : "The price");
        yield return Lines(money, money.Lines.Where(line => line.Option is null), money.Offer);
        if (Missing(money, null) is { } missing)
            yield return new Words(missing);
        foreach (var (name, quote) in money.Options)
        {
            yield return new Heading($"Option: {name}{(named ? $", with design {design.Ledger.Design}" : "")}");
            yield return Lines(money, money.Lines.Where(line => line.Option == name), quote);
            if (Missing(money, name) is { } open)
                yield return new Words(open);
        }
    }

    /// <summary>A sum of an offer with its currency; a part of it says so.</summary>
    public static string Sum(PaperInput design, Func<Quote, decimal> sum) => design.Results.Money is not { } money ? "not worked out"
        : Least(money, null) + Amount(sum(money.Offer), money.Offer.Terms) + " " + money.Currency;

    /// <summary>An amount with the places of its currency, thousands apart.</summary>
    public static string Amount(decimal amount, QuoteTerms terms)
    {
        var places = terms.Places.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return NumberManner.Current.Amount(amount.ToString("F" + places, System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>The table of an offer: its lines, what is taken off, the taxes, and what is to be paid.</summary>
    internal static Table Lines(MoneyResult money, IEnumerable<PricedLine> lines, Quote quote)
    {
        var terms = quote.Terms;
        var least = Least(money, lines.FirstOrDefault()?.Option);
        List<Row> rows = [.. lines.Select(line => Row.Of(Named(money, line.What), $"{Numbers.Show((double)line.Count)} {line.CountUnit}".Trim(), line.Net is { } net ? Amount(net, terms) : "to be told"))];
        void Add(string what, decimal amount, bool sum = false) => rows.Add(Row.Of(what, "", least + Amount(amount, terms)) with { IsSum = sum });
        if (quote.Discount != 0)
        {
            Add("together", quote.Before, sum: true);
            Add($"discount {Share(terms.Discount)}", -quote.Discount);
        }

        Add("without tax", quote.Net, sum: true);
        foreach (var group in quote.Groups.Where(group => group.Rate != 0 || group.Base != 0))
            Add(quote.Groups.Count > 1 ? $"tax {group.Name}, {Share(group.Rate)} of {Amount(group.Base, terms)}" : $"tax {Share(group.Rate)}", group.Tax);
        Add("to pay", quote.Gross, sum: true);
        return new Table([new("what") { Grows = true }, new("count", Anchor.End) { Least = 60 }, new($"price [{money.Currency}]", Anchor.End) { Least = 90 }], rows);
    }

    // A model by its name alone tells a client nothing; a name that says what it is already is not said twice.
    private static string Named(MoneyResult money, string what)
    {
        var words = what.Split(' ');
        if (words.Length == 2 && words[1].StartsWith(words[0], StringComparison.Ordinal))
            return words[0] == "manager" ? $"cord {words[1]}" : words[1];
        var (model, catalogue) = (what.Split(',')[0], money.Bound.Catalogue);
        var kind = catalogue.Switches.ContainsKey(model) ? "switch"
            : catalogue.Injectors.ContainsKey(model) ? "injector"
            : catalogue.Standby.ContainsKey(model) ? "standby supply"
            : catalogue.Modules.ContainsKey(model) ? "module for a link"
            : money.Bound.Endpoints.FirstOrDefault(endpoint => endpoint.Model.Id == model)?.Model.Kind;
        return kind is null ? what : $"{kind} {what}";
    }

    private static string Least(MoneyResult money, string? option) => money.Lines.Any(line => line.Option == option && line.Net is null) ? "at least " : "";

    private static string? Missing(MoneyResult money, string? option)
    {
        var open = money.Lines.Where(line => line.Option == option && line.Net is null).Select(line => line.What).ToList();
        return open.Count == 0 ? null : $"Without a price yet, and so in no sum: {Written.List(open)}. What {(open.Count == 1 ? "does it" : "do they")} cost? The sums are final when that is told.";
    }

    private static string Share(decimal share) => Numbers.Show((double)(share * 100), "%");
}

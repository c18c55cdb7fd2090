using System.Globalization;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Tests.Papers;

public sealed class QuotationTests
{
    private static readonly MoneyResult Money = Studied.Example("barn-vets").Results.Money!;

    private static readonly Gen<Quote> Quotes = Gen.Select(
        Gen.Select(Gen.Int[1, 9_999_999], Gen.Int[0, 1]).Array[1, 30], Gen.Int[0, 30], Gen.Bool,
        (lines, discount, byLine) => Quote.Of(
            lines.Select((line, i) => new PricedLine($"thing {i}", 1, "", null, line.Item1 / 100m, line.Item2 == 0 ? "full" : "less", null)),
            new QuoteTerms([("full", 0.19m), ("less", 0.07m)], discount / 100m, byLine, TieRule.Even, 2)));

    [Fact]
    public void Every_printed_quote_adds_up_to_the_cent()
    {
        Quotes.Sample(
            quote =>
            {
                var rows = QuotationLines.Lines(Money with { Lines = quote.Lines, Offer = quote }, quote.Lines, quote).Rows;
                decimal Printed(Row row) => decimal.Parse(row.Cells[2].Text.Replace("\u00A0", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
                decimal Of(string what) => rows.Where(row => row.Cells[0].Text.StartsWith(what, StringComparison.Ordinal)).Sum(Printed);
                Assert.Equal(Of("without tax"), Of("thing") + Of("discount"));
                Assert.Equal(Of("to pay"), Of("without tax") + Of("tax"));
                Assert.Equal(quote.Gross, Of("to pay"));
            },
            iter: 500);
    }

    [Fact]
    public void A_sum_of_which_a_part_is_not_known_says_so_and_asks()
    {
        var open = Money.Lines.Append(new PricedLine("a mast nobody has priced", 1, "", null, null, null, null)).ToList();
        var table = QuotationLines.Lines(Money with { Lines = open }, open.Where(line => line.Option is null), Money.Offer);
        Assert.StartsWith("at least ", table.Rows[^1].Cells[2].Text, StringComparison.Ordinal);
        Assert.Contains(table.Rows, row => row.Cells[2].Text == "to be told");
    }
}

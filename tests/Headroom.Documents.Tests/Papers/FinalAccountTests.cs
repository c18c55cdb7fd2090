using System.Globalization;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Tests.Papers;

public sealed class FinalAccountTests
{
    private static readonly PaperInput Barn = Studied.Example("barn-vets");

    private static readonly string[] Heads = ["row", "what", "count", "unit", "offered_net", "final_net", "currency", "tax_group", "tax_percent", "remark"];

    [Fact]
    public void Its_rows_add_up_to_the_offer_to_the_cent()
    {
        var (rows, offer) = (Rows(Barn), Barn.Results.Money!.Offer);
        Assert.Equal(Heads, rows[0]);
        decimal Sum(string row) => rows.Where(cells => cells[0] == row && cells[4].Length > 0).Sum(cells => decimal.Parse(cells[4], CultureInfo.InvariantCulture));
        Assert.True(offer.Gross > 0);
        Assert.Equal(offer.Net, Sum("line") + Sum("discount"));
        Assert.Equal(offer.Net, Sum("net"));
        Assert.Equal(offer.Tax, Sum("tax"));
        Assert.Equal(offer.Gross, Sum("net") + Sum("tax"));
        Assert.Equal(offer.Gross, Sum("gross"));
        Assert.All(rows.Skip(1), cells => Assert.Equal("", cells[5]));
    }

    // Lines, variations and tax by hand: (300.00 less 10 %) and 2 x 35.00 at 20 %, 19.99 at 0 %; tax once for each group.
    [Fact]
    public void Once_the_job_is_done_it_says_what_it_came_to_and_leaves_blank_what_nobody_wrote()
    {
        var terms = new QuoteTerms([("standard", 0.20m), ("free", 0m)], 0.10m, TaxByLine: false, Domain.Jobs.TieRule.Away, 2);
        List<PricedLine> lines = [new PricedLine("cable", 1, "", 100m, 300m, null, null), new PricedLine("a mast", 1, "", 50m, 80m, null, "mast")];
        Domain.Jobs.ExtraLine Ordered(string what, int count, decimal? price, string? tax) =>
            new(what, count, null, price is { } amount ? new Given<Domain.Quantities.Money>(new(amount, Barn.Results.Money!.Currency), "", Origin.Declared, null, Domain.Findings.Place.None) : null, tax, null, Domain.Findings.Place.None);
        string[][] Of(params Domain.Jobs.ExtraLine[] ordered)
        {
            var money = Barn.Results.Money!;
            var done = money with { Lines = lines, Offer = Quote.Of(lines.Take(1), terms), Terms = money.Terms with { Afterwards = new(null, null, null, null, ordered) } };
            return [.. System.Text.Encoding.UTF8.GetString(FinalAccount.Write(done).Bytes.Span).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Select(Cells)];
        }

        var rows = Of(Ordered("outlets moved", 2, 35m, null), Ordered("a book", 1, 19.99m, "free"));
        string Final(string row, string what) => rows.Single(cells => cells[0] == row && cells[1].StartsWith(what, StringComparison.Ordinal))[5];
        Assert.Equal(("300.00", "", "70.00", "19.99", "-30.00"), (Final("line", "cable"), Final("option", "a mast"), Final("variation", "outlets"), Final("variation", "a book"), Final("discount", "discount")));
        Assert.Equal(("359.99", "68.00", "0.00", "427.99"), (Final("net", ""), Final("tax", "tax on 340.00"), Final("tax", "tax on 19.99"), Final("gross", "")));
        Assert.Equal(5, rows.Count(cells => cells[0] == "variation"));
        var open = Of(Ordered("outlets moved", 2, null, null));
        Assert.All(open.Where(cells => cells[0] is "net" or "tax" or "gross" or "variation"), cells => Assert.Equal("", cells[5]));
        Assert.Contains(open, cells => cells[9] == "what was charged for outlets moved?");
    }

    [Fact]
    public void A_text_that_a_spreadsheet_would_take_for_a_formula_stays_text_and_a_price_below_zero_a_number()
    {
        var money = Barn.Results.Money!;
        var changed = FinalAccountOf([new PricedLine("=1+1, \"quoted\"", 1, "", null, 10m, null, null), new PricedLine("-40 taken back", 1, "", null, -4.50m, null, null)], money.Offer.Terms);
        Assert.Contains("line,\"'=1+1, \"\"quoted\"\"\",1,,10.00,", changed, StringComparison.Ordinal);
        Assert.Contains("line,'-40 taken back,1,,-4.50,", changed, StringComparison.Ordinal);
        Assert.EndsWith("\r\n", changed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_without_a_price_is_in_no_sum_and_the_sums_say_at_least()
    {
        var text = FinalAccountOf([new PricedLine("known", 1, "", null, 10m, null, null), new PricedLine("a mast", 1, "", null, null, null, null)], Barn.Results.Money!.Offer.Terms);
        Assert.Contains("line,a mast,1,,,,", text, StringComparison.Ordinal);
        Assert.Matches("\ngross,to pay,[^\r]*at least", text);
    }

    private static string FinalAccountOf(IReadOnlyList<PricedLine> lines, QuoteTerms terms)
    {
        var money = Barn.Results.Money! with { Lines = lines, Offer = Quote.Of(lines, terms) };
        return System.Text.Encoding.UTF8.GetString(FinalAccount.Write(money).Bytes.Span);
    }

    private static List<string[]> Rows(PaperInput input) =>
        [.. System.Text.Encoding.UTF8.GetString(PaperPack.Write(input, [PaperList.Find("final-account")!], SheetSize.A4).Papers[0].Bytes.Span).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Select(Cells)];

    // Commas within quotation marks part nothing.
    private static string[] Cells(string line) => [.. System.Text.RegularExpressions.Regex.Matches(line, "(?:^|,)(\"(?:[^\"]|\"\")*\"|[^,]*)").Select(cell => cell.Groups[1].Value.Trim('"').Replace("\"\"", "\"", StringComparison.Ordinal))];
}

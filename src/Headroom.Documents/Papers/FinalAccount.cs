using System.Buffers;
using System.Globalization;
using System.Text;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Papers;

/// <summary>The final account as comma-separated values (RFC 4180): what was offered, line by line as the client reads it, and, once the job is done, what it came to with what was ordered on the way. What is not known is blank. Prices only, never cost.</summary>
internal static class FinalAccount
{
    private const int RoomForVariations = 5;

    private static readonly string[] Heads = ["row", "what", "count", "unit", "offered_net", "final_net", "currency", "tax_group", "tax_percent", "remark"];
    private static readonly SearchValues<char> Special = SearchValues.Create(",\"\r\n");

    /// <summary>Writes it; null when the job says nothing of money.</summary>
    public static WrittenPaper? Write(PaperInput input) => input.Results.Money is { } money ? Write(money) : null;

    /// <summary>Writes that of an offer.</summary>
    internal static WrittenPaper Write(MoneyResult money) =>
        new("final-account.csv", Encoding.UTF8.GetBytes(string.Concat(Rows(money).Prepend(Heads).Select(cells => string.Join(',', cells.Select(Cell)) + "\r\n"))), 0);

    private static IEnumerable<string[]> Rows(MoneyResult money)
    {
        var (terms, offer) = (money.Offer.Terms, money.Offer);
        var (ordered, whole) = (Variations.Of(money), Variations.Whole(money));
        foreach (var line in money.Lines.Where(line => line.Option is null))
            yield return Line(money, "line", line, ordered is not null ? line.Net : null, line.Net is null ? line.Question ?? "without a price yet, in no sum" : "");
        foreach (var line in money.Lines.Where(line => line.Option is not null))
            yield return Line(money, "option", line, null, $"option {line.Option}: in no sum, counts when it was ordered");
        foreach (var line in ordered ?? [])
            yield return Line(money, "variation", line with { Net = null }, line.Net, line.Question ?? "number and date of the signed sheet");
        for (var i = ordered?.Count ?? 0; i < RoomForVariations; i++)
            yield return ["variation", "", "", "", "", "", money.Currency, "", "", "number and date of the signed sheet"];
        var part = money.Lines.Any(line => line is { Option: null, Net: null }) ? "at least: a line has no price yet" : "";
        if (offer.Discount != 0)
            yield return ["discount", "discount", "", "", Amount(-offer.Discount, terms), ordered is null ? "" : Amount(-offer.Discount, terms), money.Currency, "", Percent(terms.Discount), ""];
        yield return ["net", "without tax", "", "", Amount(offer.Net, terms), Final(whole?.Net), money.Currency, "", "", part];
        foreach (var (group, final) in offer.Groups.Select((group, i) => (group, whole?.Groups[i])).Where(pair => pair.group.Rate != 0 || pair.group.Base != 0 || pair.Item2?.Base is > 0 or < 0))
            yield return ["tax", $"tax on {Amount((final ?? group).Base, terms)}", "", "", Amount(group.Tax, terms), Final(final?.Tax), money.Currency, group.Name, Percent(group.Rate), part];
        yield return ["gross", "to pay", "", "", Amount(offer.Gross, terms), Final(whole?.Gross), money.Currency, "", "", part.Length > 0 ? part : terms.RoundingInWords];
        yield return ["paid", "", "", "", "", "", money.Currency, "", "", "payments, with their days"];
        string Final(decimal? amount) => amount is { } known ? Amount(known, terms) : "";
    }

    private static string[] Line(MoneyResult money, string row, PricedLine line, decimal? final, string remark)
    {
        var terms = money.Offer.Terms;
        var group = line.Tax ?? (terms.Taxes.Count > 0 ? terms.Taxes[0].Name : "");
        var rate = terms.Taxes.FirstOrDefault(tax => tax.Name == group).Rate;
        return [row, line.What, line.Count.ToString(CultureInfo.InvariantCulture), line.CountUnit, line.Net is { } net ? Amount(net, terms) : "", final is { } came ? Amount(came, terms) : "", money.Currency, group, terms.Taxes.Count > 0 ? Percent(rate) : "", remark];
    }

    private static string Amount(decimal amount, QuoteTerms terms) => amount.ToString("F" + terms.Places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Percent(decimal share) => (share * 100).ToString("0.####", CultureInfo.InvariantCulture);

    // Where a spreadsheet would take a text for a formula, an apostrophe stands before it; a number below zero stays a number.
    private static string Cell(string text)
    {
        if (text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' && !decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
            text = "'" + text;
        return text.AsSpan().ContainsAny(Special) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }
}

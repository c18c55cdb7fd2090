using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Record;
using Headroom.Engineering.Reliability;

namespace Headroom.Cli.Text;

/// <summary>Failure rates, comparisons and the shelf of a firm's record, for people.</summary>
internal static class RecordFleetText
{
    private const int Label = 12;

    /// <summary>Writes them.</summary>
    public static void Write(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        if (result.Models.Count == 0)
            return;
        WriteRates(page, result, open);
        WriteComparisons(page, result, open);
        WriteShelf(page, result, open);
    }

    private static void WriteRates(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        page.Gap();
        page.Line("How often they fail, % of units a year, with 90 %");
        var table = new TextTable("model", "units", "hours", "failed", "believed", "from, to", "classical");
        foreach (var model in result.Models)
        {
            var hours = model.Hours is { } known ? Math.Round(known).ToString(CultureInfo.InvariantCulture) : "?";
            table.Add(model.Model, Count(model.Units), hours, Count(model.Failures), Percent(model.YearRate), Range(model.LeastYearRate, model.MostYearRate), Classical(model));
        }

        table.Write(page);
        page.Paragraph("Believed: one failure in half its maker's hours, then what was seen is added (Gamma and Poisson); classical: 2T / χ², from what was seen alone (NIST/SEMATECH e-Handbook 8.4.6 and 8.4.5.1). They stand in the order of what is believed, not of failures over hours.", 2, 2);
        foreach (var model in result.Models.Where(model => model.Question is not null))
            page.Labelled(model.Model, Words.Sentence(model.Question!), 2, Label);
        foreach (var model in result.Models)
            open(page, $"{model.Model}, how often it fails", model.Work());
    }

    private static string Classical(RecordedModel model) =>
        model.Classical is { } range ? Range(EarlyLife.YearHours / range.MostHours ?? 0, EarlyLife.YearHours / range.LeastHours) : "?";

    private static string Range(double? least, double? most) => least is null ? "?" : $"{Percent(least)} to {Percent(most)}";

    // Rates of a few failures are known to two or three digits.
    private static string Percent(double? rate) => rate is not { } known ? "?" : known == 0 ? "0" : Numbers.Show(Math.Round(100 * known, Math.Clamp(1 - (int)Math.Floor(Math.Log10(100 * known)), 0, 9)));

    private static void WriteComparisons(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        if (result.Pairs.Count + result.Places.Count > 0)
        {
            page.Gap();
            page.Line("Do they differ?");
        }

        foreach (var pair in result.Pairs)
        {
            page.Paragraph($"Does {pair.First} fail more often than {pair.Second}? {pair.Sentence}", 2, 4);
            open(page, $"{pair.First} against {pair.Second}", ComparisonWorking.Of(pair));
        }

        foreach (var places in result.Places)
        {
            page.Paragraph($"Does {places.Model} fail more often in hot places? {places.Sentence}", 2, 4);
            open(page, $"{places.Model}, hot against cool", ComparisonWorking.Of(places));
        }

        var tested = result.Pairs.Count(pair => pair.IsEnough) + result.Places.Count(places => places.Chance is not null);
        if (tested > 2)
            page.Paragraph($"{tested} questions were asked of the same record: of twenty such, one comes out as told apart by chance.", 2, 2);
        foreach (var model in result.Models.Where(model => model.Places is not null && model.HoursOfUnknownPlace > 0))
            page.Paragraph($"{model.Model}: {Numbers.Show(model.HoursOfUnknownPlace, "h")} of {Numbers.Show(model.Hours!.Value, "h")} are neither hot nor cool; nobody wrote how warm they stand.", 2, 4);
    }

    private static void WriteShelf(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        if (result.Shelf.Count == 0)
            return;
        page.Gap();
        page.Line("Spares");
        var table = new TextTable("model", "in service", "supplier", "certain", "wanted", "there are", "") { TextAtEnd = 1 };
        foreach (var entry in result.Shelf)
        {
            var model = result.Models.First(model => model.Model == entry.Subject);
            table.Add(entry.Subject, Count(model.Units), model.SupplierHours is { } hours ? Numbers.Show(hours / 24, "d") : "?", Numbers.Show(100 * model.Certainty, "%"), Count((int?)entry.Demand), Count((int?)entry.Limit), Words.Of(entry.Verdict));
        }

        table.Write(page);
        page.Paragraph("Wanted: the fewest that are enough until the supplier has sent new ones (negative binomial, so that a rate known from few failures asks for more).", 2, 2);
        foreach (var entry in result.Shelf.Where(entry => entry.Question is not null))
            page.Labelled(entry.Subject, Words.Sentence(entry.Question!), 2, Label);
        foreach (var entry in result.Shelf)
            open(page, $"{entry.Subject}, spares", entry.Story.Work(entry));
    }

    private static string Count(int? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "?";
}

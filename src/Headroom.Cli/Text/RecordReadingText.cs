using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Record;

namespace Headroom.Cli.Text;

/// <summary>Predicted beside measured, and what devices draw, for people.</summary>
internal static class RecordReadingText
{
    /// <summary>Writes them.</summary>
    public static void Write(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        WritePredictions(page, result, open);
        WriteDraws(page, result, open);
    }

    private static void WritePredictions(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        if (result.Predictions.Count > 0)
        {
            page.Gap();
            page.Line("Measured beside predicted");
            var table = new TextTable("quantity", "n", "bias", "by chance", "scatter", "within", "") { TextAtEnd = 1 };
            foreach (var check in result.Predictions)
                table.Add(Name(check), Count(check.Count), Signed(check.Bias, check.Unit), Chance(check.BiasChance), check.Scatter is { } scatter ? Numbers.Show(Round(scatter)) : "?", check.Stated == 0 ? "none stated" : $"{check.Within} of {check.Stated}", Verdict(check));
            table.Write(page);
            page.Paragraph("Bias: mean of measured − predicted, by Student's t on the differences. Within: as many as lie in the interval stated, that of the instrument added (2 % where none is written); 19 of 20 are to (k = 2, JCGM 100), and 'narrow' says that fewer do. Of twenty lines, one is told by chance.", 2, 2);
            foreach (var check in result.Predictions)
                open(page, $"{Name(check)}, measured beside predicted", check.Work());
        }

        if (result.Left.Count == 0)
            return;
        page.Gap();
        page.Paragraph($"Readings compared with nothing: {string.Join(", ", result.Left.Select(left => $"{left.Value} {left.Key}"))}.", 0, 2);
    }

    private static void WriteDraws(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        if (result.Draws.Count == 0)
            return;
        page.Gap();
        page.Line("What devices draw, in W, by the readings");
        var table = new TextTable("model", "mode", "sites", "n", "catalogue", "mean", "one", "ten", "") { TextAtEnd = 1 };
        foreach (var draw in result.Draws)
            table.Add(draw.Model, draw.Mode, Count(draw.Sites.Count), Count(draw.Readings), Numbers.Show(draw.NameplateWatts), Watts(draw.Draw.MeanWatts), Watts(draw.Draw.Together(1, DrawTotal.Chance)), Watts(draw.Draw.Together(10, DrawTotal.Chance)), draw.IsPriorDriven ? "prior-driven" : "");
        table.Write(page);
        page.Paragraph($"Mean of one at a new site; one, and ten together, as all but one of a hundred sites keep to. Two levels, the site and the unit, over a belief from the catalogue (docs/measured-draws.md). Below {FittedDraw.EnoughSites} sites that belief decides. A study takes the same file: --readings.", 2, 2);
        foreach (var draw in result.Draws)
            open(page, $"{draw.Model}, {draw.Mode}, what it draws", DrawWorking.Of(draw));
    }

    private static string Name(PredictionCheck check) => check.Model is null ? check.What : $"  {check.Model}";

    private static string Verdict(PredictionCheck check) => (check.IsBiased, check.IsTooNarrow) switch
    {
        (true, true) => "biased, narrow",
        (true, false) => "biased",
        (false, true) => "narrow",
        _ => check.Count < 2 ? "one only" : "",
    };

    private static string Signed(double bias, string unit) => (bias > 0 ? "+" : "") + Numbers.Show(Round(bias), unit);

    private static string Chance(double? chance) => chance is { } known ? known < 0.001 ? "< 0.1 %" : Numbers.Show(Math.Round(100 * known, 1), "%") : "?";

    // Differences of readings are known to two or three digits.
    private static double Round(double value) => value == 0 ? 0 : Math.Round(value, Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9));

    private static string Watts(double watts) => watts.ToString("F1", CultureInfo.InvariantCulture);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}

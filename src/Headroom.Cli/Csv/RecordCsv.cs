using System.Globalization;
using Headroom.Cli.Text;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Record;

namespace Headroom.Cli.Csv;

/// <summary>What a firm's record says as comma-separated values (RFC 4180): a row a figure, whichever part it is of.</summary>
internal static class RecordCsv
{
    private static readonly string[] Heads = ["part", "subject", "against", "figure", "value", "low", "high", "unit", "n", "told"];

    /// <summary>Writes header and rows, each ended as the RFC wants it.</summary>
    public static string Write(RecordResult result) => string.Concat(Rows(result).Prepend(Heads).Select(cells => string.Join(',', cells) + "\r\n"));

    private static IEnumerable<string[]> Rows(RecordResult result) => Fleet(result).Concat(Jobs(result)).Concat(Readings(result)).Concat(result.Missing.Select(part => Row(("missing", part.File, ""), "", (null, null, null), "", null, part.Means)));

    private static IEnumerable<string[]> Fleet(RecordResult result)
    {
        foreach (var model in result.Models)
        {
            yield return Row(("failures", model.Model, ""), "believed rate", (model.YearRate, model.LeastYearRate, model.MostYearRate), "1/a", model.Failures, model.Question ?? "");
            yield return Row(("failures", model.Model, ""), "classical hours between failures", (model.Classical?.Hours, model.Classical?.LeastHours, model.Classical?.MostHours), "h", model.Failures, "");
            yield return Row(("failures", model.Model, ""), "hours in service", (model.Hours, null, null), "h", model.Units, "");
        }

        foreach (var pair in result.Pairs)
            yield return Row(("compared", pair.First, pair.Second), "ratio of rates", (pair.Ratio.Ratio, pair.Ratio.Least, pair.Ratio.Most), "", pair.Failures, pair.Sentence);
        foreach (var places in result.Places)
            yield return Row(("compared", places.Model, "hot against cool"), "ratio of rates", (places.Ratio.Ratio, places.Ratio.Least, places.Ratio.Most), "", places.Failures, places.Sentence);
        foreach (var entry in result.Shelf)
        {
            yield return Row(("spares", entry.Subject, ""), "wanted", (entry.Demand, null, null), "pieces", null, entry.Question ?? Words.Of(entry.Verdict));
            yield return Row(("spares", entry.Subject, ""), "there are", (entry.Limit, null, null), "pieces", null, "");
        }
    }

    private static IEnumerable<string[]> Jobs(RecordResult result)
    {
        foreach (var job in result.Jobs)
        {
            var lacks = job.NotKnown.Count == 0 ? "" : $"not known: {string.Join(", ", job.NotKnown)}";
            yield return Row(("jobs", job.Row.Job, ""), "margin", (100 * (double?)job.Margin, null, 100 * (double?)job.MarginAtMost), "%", null, lacks);
            yield return Row(("jobs", job.Row.Job, ""), "brought", (job.Sum.Revenue, null, null), job.Row.Currency ?? "", null, "");
            yield return Row(("jobs", job.Row.Job, ""), "cost", (job.Sum.Cost, job.KnownCost, null), job.Row.Currency ?? "", null, lacks);
            yield return Row(("jobs", job.Row.Job, ""), "worked over estimated", (job.Overrun, null, null), "", null, "");
        }

        foreach (var made in result.Made)
            yield return Row(("jobs", "all", ""), "margin", (100 * (double?)made.Margin, null, null), "%", made.Jobs, made.Currency);
        if (result.Hours is { } hours)
            yield return Row(("jobs", "all", ""), "worked over estimated", (hours.Factor, null, null), "", hours.Ratios.Count, hours.IsEnough ? "" : "too few jobs to plan by");
    }

    private static IEnumerable<string[]> Readings(RecordResult result)
    {
        foreach (var check in result.Predictions)
        {
            var subject = ("predicted", check.What, check.Model ?? "");
            yield return Row(subject, "bias", (check.Bias, null, null), check.Unit, check.Count, check.IsBiased ? "biased" : "");
            yield return Row(subject, "scatter", (check.Scatter, null, null), check.Unit, check.Count, "");
            yield return Row(subject, "within the interval", (check.Stated == 0 ? null : check.Within, null, null), "readings", check.Stated, check.IsTooNarrow ? "interval too narrow" : "");
        }

        foreach (var draw in result.Draws)
        {
            yield return Row(("draws", draw.Model, draw.Mode), "mean", (draw.Draw.MeanWatts, null, draw.NameplateWatts), "W", draw.Sites.Count, draw.IsPriorDriven ? "prior-driven" : "");
            yield return Row(("draws", draw.Model, draw.Mode), "one unit", (draw.Draw.Together(1, DrawTotal.Chance), null, null), "W", draw.Sites.Count, "");
            yield return Row(("draws", draw.Model, draw.Mode), "ten together", (draw.Draw.Together(10, DrawTotal.Chance), null, null), "W", draw.Sites.Count, "");
        }
    }

    private static string[] Row((string Part, string Subject, string Against) of, string figure, (object? Value, object? Low, object? High) values, string unit, int? count, string told) =>
    [
        of.Part, CsvCell.Text(of.Subject), CsvCell.Text(of.Against), figure, Number(values.Value), Number(values.Low), Number(values.High), unit, count?.ToString(CultureInfo.InvariantCulture) ?? "", CsvCell.Text(told),
    ];

    // Amounts stay decimals to the last digit.
    private static string Number(object? value) => value switch
    {
        decimal amount => amount.ToString(CultureInfo.InvariantCulture),
        double number => CsvCell.Number(number),
        int count => count.ToString(CultureInfo.InvariantCulture),
        _ => "",
    };
}

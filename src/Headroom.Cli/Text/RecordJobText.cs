using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Money;
using Headroom.Engineering.Record;

namespace Headroom.Cli.Text;

/// <summary>What jobs took and made, for people. All of it is inside.</summary>
internal static class RecordJobText
{
    /// <summary>Writes it.</summary>
    public static void Write(Page page, RecordResult result, Action<Page, string, Working> open)
    {
        if (result.Jobs.Count == 0)
            return;
        foreach (var group in result.Jobs.GroupBy(job => job.Row.Currency))
            WriteTable(page, group.Key, [.. group]);
        page.Paragraph("Margin: (brought − cost) / brought, with variations, visits and coming back. It is a share of the price; a mark-up would be one of the cost.", 2, 2);
        foreach (var job in result.Jobs.Where(job => job.NotKnown.Count > 0))
            page.Paragraph($"{job.Row.Job}: not known {(job.NotKnown.Count == 1 ? "is" : "are")} {string.Join(", ", job.NotKnown)}.", 2, 4);
        WriteSums(page, result);
        foreach (var job in result.Jobs)
            open(page, $"{job.Row.Job}, what it made", job.Work());
    }

    private static void WriteTable(Page page, string? currency, IReadOnlyList<RecordedJob> jobs)
    {
        page.Gap();
        page.Line(currency is null ? "What jobs took, in h" : $"What jobs took, in h, and made, in {currency} (for the firm's own eyes)");
        var table = new TextTable("job", "est.", "worked", "back", "trips", "brought", "cost", "margin") { WidestFirst = 21 };
        foreach (var job in jobs)
            table.Add(job.Row.Job, Hours(job.Row.Estimated), Hours(job.Row.Worked), Count(job.Row.CallBacks), Count(job.Journeys), Amount(job.Sum.Revenue, job), Cost(job), Margin(job));
        table.Write(page);
    }

    private static void WriteSums(Page page, RecordResult result)
    {
        foreach (var made in result.Made)
        {
            var left = made.NotKnown > 0 ? $"; {Words.Count(made.NotKnown, "job is", "jobs are")} left out, since something is not known" : "";
            page.Paragraph(made.Margin is { } margin
                ? $"{Words.Count(made.Jobs, "job", "jobs")} together brought {Money(made.Revenue, made.Currency)} {made.Currency} and cost {Money(made.Cost, made.Currency)} {made.Currency}: {Percent(margin)} remained{left}."
                : $"Of no job in {made.Currency} everything is known.", 2, 2);
        }

        if (result.Hours is not { Factor: { } factor } hours)
            return;
        var scatter = hours.Scatter is { } spread ? $", job by job ± {Numbers.Show(Math.Round(spread, 2))} (one standard deviation)" : "";
        page.Paragraph($"{Words.Count(hours.Ratios.Count, "job", "jobs")} took {Numbers.Show((double)Math.Round(factor, 3))} times the hours estimated ({Hours(hours.Worked)} h worked of {Hours(hours.Estimated)} h){scatter}.{(hours.IsEnough ? "" : $" Fewer than {HoursLearned.EnoughJobs} jobs: it says little.")}", 2, 2);
        var known = result.Jobs.Where(job => job.Row.CallBacks is not null).ToList();
        if (known.Count > 0)
            page.Paragraph($"Somebody had to come back to {known.Count(job => job.Row.CallBacks > 0)} of {Words.Count(known.Count, "job", "jobs")}, {Words.Count(known.Sum(job => job.Row.CallBacks!.Value), "time", "times")} in all.", 2, 2);
    }

    /// <summary>A share in percent, to a tenth.</summary>
    public static string Percent(decimal share) => (100 * share).ToString("F1", CultureInfo.InvariantCulture) + " %";

    private static string Margin(RecordedJob job) =>
        job.Margin is { } margin ? Percent(margin) : job.MarginAtMost is { } most ? $"≤ {Percent(most)}" : "?";

    private static string Cost(RecordedJob job) => job.Sum.Cost is { } cost ? Amount(cost, job) : job.KnownCost > 0 ? $"≥ {Amount(job.KnownCost, job)}" : "?";

    private static string Amount(decimal? amount, RecordedJob job) => amount is { } known ? Money(known, job.Row.Currency!) : "?";

    private static string Money(decimal amount, string currency) => amount.ToString($"F{MinorUnits.Of(currency)}", CultureInfo.InvariantCulture);

    private static string Count(int? count) => count?.ToString(CultureInfo.InvariantCulture) ?? "?";

    private static string Hours(decimal? hours) => hours is { } known ? known.ToString("0.#", CultureInfo.InvariantCulture) : "?";
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Money;

/// <summary>What the job made, against what was wanted. All of it is inside.</summary>
internal static class AfterwardsEntries
{
    private const string Subject = "afterwards";

    /// <summary>Adds the entries.</summary>
    public static void Add(List<LedgerEntry> entries, MoneyResult result, AfterwardsSum after, Reserve reserve)
    {
        if (result.Terms.LeastMargin is { } floor)
            entries.Add(Margin(result, after, 100 * floor.Value.Value, reserve));
        if (result.Labour is { } labour)
            entries.Add(Hours(labour, after, result, reserve));
    }

    private static LedgerEntry Margin(MoneyResult result, AfterwardsSum after, double floor, Reserve reserve)
    {
        var entry = new EntryDraft(MoneyLedger.Discipline, Subject, "margin", "margin in the end", "%", "money") { Sense = Sense.AtLeast, Inside = true }.With(
            floor,
            100 * (double?)after.Margin,
            reserve,
            new LateStory(
                e => $"The job made {Words.Of(e.Limit!.Value)} % of its price; the offer foresaw {Words.Of(100 * (double)(result.Margin ?? 0))} %.",
                e => new Working(
                    "(price − cost) / price, with what was ordered on the way",
                    [
                        new("hours worked", (double?)after.Hours, "h", Origins.Of(result.Terms.Afterwards!.Hours)),
                        new("price with variations, without tax", (double?)after.Revenue, result.Currency, "offer and variations"),
                        new("cost", (double?)after.Cost, result.Currency, "hours, material, visits, variations"),
                        new("least margin", floor, "%", Origins.Of(result.Terms.LeastMargin)),
                    ],
                    [new("margin", "(price − cost) / price", e.Limit, "%")],
                    "arithmetic"),
                e => [new("cost in the end", result.Currency, (double?)after.Cost, (double?)after.Revenue * (1 - floor / 100), null)]));
        return entry with { Question = entry.Studied == Verdict.Unknown ? after.Question ?? "what did the job cost?" : null };
    }

    private static LedgerEntry Hours(LabourSum labour, AfterwardsSum after, MoneyResult result, Reserve reserve)
    {
        var entry = new EntryDraft(MoneyLedger.Discipline, Subject, "hours", "hours worked", "h", "money") { Inside = true }.With(
            (double?)after.Hours,
            labour.NotKnown.Any() ? null : (double)labour.Hours,
            reserve,
            new LateStory(
                e => $"{Words.Of(e.Demand!.Value)} h were worked; {Words.Of(e.Limit!.Value)} ± {Words.Of(labour.DeviationHours)} h were expected.",
                e => new Working(
                    "Σ n · (low + 4 · likely + high) / 6, times the factor of the site",
                    [.. labour.Tasks.Select(task => new WorkingInput($"{task.Count} x {task.Task}", (double?)task.Minutes, "min", "the mean of one")), new("hours worked", (double?)after.Hours, "h", Origins.Of(result.Terms.Afterwards!.Hours))],
                    [new("factor of the site", "its mean", (double)labour.Factor, ""), new("hours expected", "the sum times the factor", (double)labour.Hours, "h")],
                    "three-point estimate"),
                e => [new("hours", "h", e.Demand, e.Limit, e.Limit - e.Reserve)]));
        return entry with
        {
            Question = entry.Studied != Verdict.Unknown ? null : after.Hours is null ? "how many hours did it take?" : $"how long does one of these take: {Words.List([.. labour.NotKnown])}?",
            Advice = entry.Studied == Verdict.Short ? ["put what it took into 'tasks' of the next offer"] : [],
        };
    }
}

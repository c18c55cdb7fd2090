using Headroom.Engineering.Money;

namespace Headroom.Engineering.Record;

/// <summary>What jobs in one currency made together.</summary>
/// <param name="Currency">The currency.</param>
/// <param name="Jobs">Jobs of which everything is known.</param>
/// <param name="NotKnown">Jobs of which something is not.</param>
/// <param name="Revenue">What the known ones brought.</param>
/// <param name="Cost">What they cost.</param>
public sealed record MoneyMade(string Currency, int Jobs, int NotKnown, decimal Revenue, decimal Cost)
{
    /// <summary>What remained of the price, as a share of it; null when nothing is known.</summary>
    public decimal? Margin => Jobs == 0 ? null : Margins.Of(Cost, Revenue);

    /// <summary>Adds up jobs, each currency by itself. Source: arithmetic.</summary>
    /// <param name="jobs">The jobs.</param>
    /// <returns>A sum for each currency, in the order in which they first come.</returns>
    public static IReadOnlyList<MoneyMade> Of(IReadOnlyList<RecordedJob> jobs) =>
    [
        .. jobs.Where(job => job.Row.Currency is not null).GroupBy(job => job.Row.Currency!).Select(group =>
        {
            var known = group.Where(job => job.Margin is not null).ToList();
            return new MoneyMade(group.Key, known.Count, group.Count() - known.Count, known.Sum(job => job.Sum.Revenue!.Value), known.Sum(job => job.Sum.Cost!.Value));
        }),
    ];
}

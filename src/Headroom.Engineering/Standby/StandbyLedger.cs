using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>Turns the result of the study of outages into ledger entries.</summary>
public static class StandbyLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "standby";

    /// <summary>The entries of a result.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries, not yet compared with readings.</returns>
    public static List<LedgerEntry> Entries(StandbyResult result)
    {
        var policy = result.Bound.Job.Policy;
        var entries = new List<LedgerEntry>(result.Supplies.Count * 3 + result.Kept.Count * 2 + result.Restart.Units.Count);
        foreach (var supply in result.Supplies)
            SupplyEntries.Add(entries, supply, policy);
        foreach (var service in result.Kept)
            KeptEntries.Add(entries, service, policy);
        foreach (var unit in result.Restart.Units)
        {
            if (RestartEntries.Of(unit, policy) is { } entry)
                entries.Add(entry);
        }

        return entries;
    }
}

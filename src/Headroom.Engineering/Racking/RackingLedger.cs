using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Racking;

/// <summary>Turns the result of the study of racks into ledger entries.</summary>
public static class RackingLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "racking";

    /// <summary>The entries of a result, in the order of the survey.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries.</returns>
    public static List<LedgerEntry> Entries(RackingResult result)
    {
        var entries = new List<LedgerEntry>();
        var policy = result.Bound.Job.Policy;
        foreach (var rack in result.Racks)
        {
            RackEntries.Add(entries, rack, policy);
            DepthEntries.Add(entries, rack, policy);
            WeightEntries.Add(entries, rack, policy);
            RackOutletEntries.Add(entries, rack, result);
            RackCordEntries.Add(entries, rack, result);
        }

        StandbyOutletEntries.Add(entries, result);
        StackEntries.Add(entries, result.Stacks, policy);
        return entries;
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Turns the result of the study of the cables into ledger entries.</summary>
public static class CablingLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "cabling";

    /// <summary>The entries of a result, in the order of the survey.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries, not yet compared with readings.</returns>
    public static List<LedgerEntry> Entries(CablingResult result)
    {
        var policy = result.Bound.Job.Policy;
        var entries = new List<LedgerEntry>(2 * result.Runs.Count + 16);
        var ofRuns = new RunEntries(policy);
        Shares.Gather(entries, result.Runs, (own, run) =>
        {
            ofRuns.Add(own, run);
            if (result.Readings.TryGetValue(run.Id, out var readings))
                UnbalanceEntries.Add(own, run, readings, policy);
        });

        foreach (var link in result.Links)
            FibreEntries.Add(entries, link, policy);
        foreach (var pathway in result.Pathways)
            PathwayEntries.Add(entries, pathway, policy);
        foreach (var bundle in result.Bundles)
            BundleEntries.Add(entries, bundle, policy);
        return entries;
    }
}

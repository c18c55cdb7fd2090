using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Turns the result of the study of traffic into ledger entries.</summary>
public static class TrafficLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "traffic";

    /// <summary>The entries of a result.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries, not yet compared with readings.</returns>
    public static List<LedgerEntry> Entries(TrafficResult result)
    {
        var policy = result.Bound.Job.Policy;
        var entries = new List<LedgerEntry>(result.Ports.Count + 4 * result.Switches.Count);
        var links = new LinkEntries(result, policy);
        var through = new ThroughEntries(result, policy);
        foreach (var one in result.Switches)
        {
            if (one.Behind.Known == 0)
                continue;
            links.Add(entries, one);
            through.Add(entries, one);
        }

        var ports = new PortEntries(result, policy);
        Shares.Gather(entries, result.Ports, ports.Add);
        foreach (var recorder in result.Recorders)
            RecorderEntries.Add(entries, recorder, policy);
        return entries;
    }
}

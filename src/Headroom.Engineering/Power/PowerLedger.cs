using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Turns the result of the power study into ledger entries, figures and answers.</summary>
public static class PowerLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "power";

    /// <summary>The entries of a result, in the order of the survey.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries, not yet compared with readings.</returns>
    public static List<LedgerEntry> Entries(PowerResult result)
    {
        var policy = result.Bound.Job.Policy;
        var entries = new List<LedgerEntry>(result.Ports.Count * 4 + result.Switches.Count * 3 + 16);
        var cautions = new PortCautions(result);
        Shares.Gather(entries, result.Switches, result.Ports.Count, (own, s) => own.AddRange(SwitchEntries.Of(s, result, policy)));
        foreach (var injector in result.Injectors)
            entries.AddRange(InjectorEntries.Of(injector, policy));
        Shares.Gather(entries, result.Ports, (own, port) => AddPort(own, (port, cautions.Of(port)), policy));
        entries.AddRange(VoltsEntries.WithoutRun(result.Ports));
        entries.AddRange(StartEntries.NotKnown(result.Ports));
        entries.AddRange(FaultEntries.OfLivePins(result.LivePins));
        entries.AddRange(FaultEntries.OfUnserved(result));
        return entries;
    }

    private static void AddPort(List<LedgerEntry> entries, (PoweredPort Port, IReadOnlyList<Caution> Cautions) at, Policy policy)
    {
        if (at.Port.Fault is not PortFault.None)
        {
            entries.Add(FaultEntries.Of(at.Port, at.Cautions));
            return;
        }

        entries.Add(GrantEntries.Of(at.Port, at.Cautions, policy));
        if (VoltsEntries.Of(at.Port, at.Cautions, policy) is { } volts)
            entries.Add(volts);
        if (at.Port.Feed.Passive is not null)
            entries.Add(FaultEntries.MostVolts(at.Port, at.Cautions));
        StartEntries.Add(entries, at.Port, policy);
    }
}

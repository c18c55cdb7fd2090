using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>Turns the result of the study of heat and air into ledger entries.</summary>
public static class HeatLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "heat";

    /// <summary>The entries of a result, in the order of the design.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries, not yet compared with readings.</returns>
    public static List<LedgerEntry> Entries(HeatResult result)
    {
        var policy = result.Bound.Job.Policy;
        var (temperature, air) = (policy.ReserveOf("temperature"), policy.ReserveOf("air"));
        var entries = new List<LedgerEntry>();
        foreach (var unit in result.Units)
        {
            if (InletEntries.Of(unit, result, temperature) is { } inlet)
                entries.Add(inlet);
            if (InletEntries.Cold(unit, temperature) is { } cold)
                entries.Add(cold);
            if (AltitudeEntries.Of(unit, result) is { } high)
                entries.Add(high);
            if (unit.Unit.Change is { } change)
                entries.Add(FanEntries.Of(unit, change, air));
        }

        new DeviceAir(result, temperature).AddTo(entries);
        return entries;
    }
}

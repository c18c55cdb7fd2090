using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Acoustics;

/// <summary>Turns the result of the study of sound into ledger entries.</summary>
public static class AcousticLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "sound";

    /// <summary>The entries of a result, in the order of the survey.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries, not yet compared with readings.</returns>
    public static List<LedgerEntry> Entries(AcousticResult result)
    {
        var policy = result.Bound.Job.Policy;
        return [.. result.Listeners.Select(listener => LevelEntries.Of(listener, result, policy.ReserveOf(Discipline)))];
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Differences;

/// <summary>In what two ledgers of one job differ.</summary>
/// <param name="Before">The first.</param>
/// <param name="After">The second.</param>
/// <param name="Verdicts">Entries of which the verdict changes, worst in the second first.</param>
/// <param name="Much">Entries with the same verdict of which much more or less is left, the largest change first.</param>
/// <param name="OnlyBefore">Entries that only the first has.</param>
/// <param name="OnlyAfter">Entries that only the second has.</param>
/// <param name="Same">How many entries are the same, or nearly.</param>
public sealed record LedgerDifference(
    Ledger Before,
    Ledger After,
    IReadOnlyList<EntryChange> Verdicts,
    IReadOnlyList<EntryChange> Much,
    IReadOnlyList<LedgerEntry> OnlyBefore,
    IReadOnlyList<LedgerEntry> OnlyAfter,
    int Same)
{
    /// <summary>What counts as much: a tenth of the limit, more or less left.</summary>
    public const double MuchShare = 0.1;

    /// <summary>Compares two ledgers entry by entry.</summary>
    /// <param name="before">The first.</param>
    /// <param name="after">The second.</param>
    /// <returns>The differences; the entries of each list as their ledger has them where nothing else is said.</returns>
    public static LedgerDifference Of(Ledger before, Ledger after)
    {
        var second = new Dictionary<string, LedgerEntry>(after.Entries.Count);
        foreach (var entry in after.Entries)
            second[entry.Id] = entry;
        var first = before.Entries.Select(entry => entry.Id).ToHashSet();
        var both = before.Entries.Where(entry => second.ContainsKey(entry.Id)).Select(entry => new EntryChange(entry, second[entry.Id])).ToList();
        var verdicts = both.Where(change => change.Before.Verdict != change.After.Verdict)
            .OrderByDescending(change => change.After.Verdict).ThenByDescending(change => change.Before.Verdict).ThenBy(change => change.After.Id, StringComparer.Ordinal).ToList();
        var much = both.Where(change => change.Before.Verdict == change.After.Verdict && IsMuch(change))
            .OrderByDescending(change => Math.Abs(change.Share ?? double.PositiveInfinity)).ThenBy(change => change.After.Id, StringComparer.Ordinal).ToList();
        return new LedgerDifference(
            before,
            after,
            verdicts,
            much,
            [.. before.Entries.Where(entry => !second.ContainsKey(entry.Id))],
            [.. after.Entries.Where(entry => !first.Contains(entry.Id))],
            both.Count - verdicts.Count - much.Count);
    }

    // What is known in one ledger only has changed much, whatever it is.
    private static bool IsMuch(EntryChange change) => change.Share is { } share
        ? Math.Abs(share) >= MuchShare
        : (change.Before.Left is null) != (change.After.Left is null) || change.Before.Unit != change.After.Unit;
}

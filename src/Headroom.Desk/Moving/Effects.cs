using Headroom.Desk.Shown;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Differences;

namespace Headroom.Desk.Moving;

/// <summary>What a move does to the ledger: every entry that reads otherwise afterwards.</summary>
internal static class Effects
{
    private const string NotThere = "not there";
    /// <summary>The entries that read otherwise, those that got worse first.</summary>
    public static IReadOnlyList<EntryEffect> Of(Ledger before, Ledger after)
    {
        var ledgers = LedgerDifference.Of(before, after);
        var second = after.Entries.ToDictionary(entry => entry.Id);
        var both = before.Entries.Where(entry => second.ContainsKey(entry.Id)).Select(entry => new EntryChange(entry, second[entry.Id])).Where(IsOther)
            .OrderBy(change => Better(change) switch { false => 0, null => 1, true => 2 }).ThenByDescending(change => change.After.Verdict).ThenByDescending(change => Math.Abs(change.Share ?? 0)).ThenBy(change => change.After.Id, StringComparer.Ordinal);
        return
        [
            .. both.Select(change => new EntryEffect(change.After.Id, change.After.Subject, change.After.What, Figures(change.Before), Figures(change.After), LedgerInWords.Word(change.Before.Verdict), LedgerInWords.Word(change.After.Verdict), Better(change))),
            .. ledgers.OnlyAfter.Select(entry => new EntryEffect(entry.Id, entry.Subject, entry.What, NotThere, Figures(entry), "", LedgerInWords.Word(entry.Verdict), null)),
            .. ledgers.OnlyBefore.Select(entry => new EntryEffect(entry.Id, entry.Subject, entry.What, Figures(entry), NotThere, LedgerInWords.Word(entry.Verdict), "", null)),
        ];
    }

    // What is the same on paper is the same.
    private static bool IsOther(EntryChange change) => change.Before.Verdict != change.After.Verdict || (Moves(change) && Figures(change.Before) != Figures(change.After));

    private static bool Moves(EntryChange change) => change.Before.Left != change.After.Left || change.Before.Limit != change.After.Limit;

    private static bool? Better(EntryChange change) =>
        change.Before.Verdict != change.After.Verdict ? change.After.Verdict < change.Before.Verdict
        : change.Moved is { } moved and not 0 ? moved > 0
        : null;

    private static string Figures(LedgerEntry entry)
    {
        var (asked, there, left) = EntryInWords.Figures(entry, ShownUnits.Metric);
        // Where a question is open the figures are what is known so far.
        return entry.Left is null ? "not known" : (EntryInWords.Question(entry, ShownUnits.Metric) is null ? "" : "so far ") + $"{asked} of {there}, {left} left";
    }
}

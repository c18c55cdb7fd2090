using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>What is left of every limit: the first sentence, then every entry with its bar, worst first; of many the nearest of each kind, so that it is one sheet.</summary>
internal static class LimitsPaper
{
    // What has room on one sheet below the first sentences.
    private const int MostRows = 26;

    /// <summary>What stands on it.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input)
    {
        var entries = input.Entries(inside: false);
        var shown = Shown(entries);
        var blocks = new List<Block>();
        var told = entries.Select(entry => entry.Question is { } question ? entry with { Question = Written.Bare(question) } : entry).ToList();
        blocks.AddRange(LedgerInWords.Paragraphs(input.Ledger with { Entries = told }).Select(paragraph => new Words(paragraph)));
        blocks.Add(EntryTable.Of(shown, input.Units));
        blocks.Add(new Words(Count(entries, shown.Count), Lettering.Label));
        blocks.Add(EntryTable.Legend);
        return blocks;
    }

    // All that is not clear, where that is too much for one sheet the worst of each kind; of what is clear, of every kind the one with the least left, as many as have room.
    private static List<(LedgerEntry Entry, string Subject)> Shown(IReadOnlyList<LedgerEntry> entries)
    {
        var open = entries.Where(entry => entry.Verdict != Verdict.Clear).Select(entry => (Entry: entry, entry.Subject)).ToList();
        if (open.Count > MostRows)
            open = [.. open.GroupBy(one => (one.Entry.What, one.Entry.Verdict)).Select(group => (group.First().Entry, group.Count() == 1 ? group.First().Subject : $"{group.First().Subject} and {Numbers.Show(group.Count() - 1)} more"))];
        var clear = entries.Where(entry => entry.Verdict == Verdict.Clear).ToList();
        if (entries.Count > MostRows)
            clear = [.. clear.GroupBy(entry => entry.What).Select(group => group.MinBy(Share)!).OrderBy(Share).Take(Math.Max(0, MostRows - open.Count))];
        return [.. open, .. clear.Select(entry => (entry, entry.Subject))];
    }

    // Of what lies between the floor and the limit: degrees below zero are not less than nothing.
    private static double Share(LedgerEntry entry) => entry.Left / Math.Abs((entry.Limit ?? 0) - (entry.Floor ?? 0)) is { } share && double.IsFinite(share) ? share : double.MaxValue;

    private static string Count(IReadOnlyList<LedgerEntry> entries, int shown)
    {
        var counts = string.Join(", ", new[] { Verdict.Short, Verdict.Tight, Verdict.Clear, Verdict.Unknown }
            .Select(verdict => (Count: entries.Count(entry => entry.Verdict == verdict), Word: LedgerInWords.Word(verdict)))
            .Where(one => one.Count > 0).Select(one => $"{one.Count} {one.Word}"));
        var rest = shown < entries.Count ? $" {shown} lines stand here: all that are not clear, those alike together where they are many, then of each kind of limit the one with the least left. The calculation book has all." : "";
        return $"{entries.Count} limits: {counts}.{rest}";
    }
}

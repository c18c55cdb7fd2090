using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Differences;

namespace Headroom.Cli.Text;

/// <summary>Two designs side by side: what differs first, then what it does to the limits, verdicts that change first.</summary>
internal static class CompareSheet
{
    private const int Most = 20;

    /// <summary>Writes it.</summary>
    public static string Write(ComparedDesigns compared, ShownUnits units, Pen pen)
    {
        var page = new Page(pen);
        var ledgers = compared.Ledgers;
        page.Paragraph($"{ledgers.Before.Job} · {ledgers.After.On.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}");
        page.Gap();
        page.Labelled("first", $"{ledgers.Before.Design}: {Counts(ledgers.Before)}", 2, 8);
        page.Labelled("second", $"{ledgers.After.Design}: {Counts(ledgers.After)}", 2, 8);
        if (compared.Swaps.Count > 0)
            page.Paragraph("Readings are left out on both sides: they are of what stood there before.", 2, 2);
        WriteDesigns(page, compared.Designs);
        WriteChanges(page, "Verdict changes", ledgers.Verdicts, units);
        WriteChanges(page, "Verdict stays, much more or less is left", ledgers.Much, units);
        WriteOnly(page, "Only in the first", ledgers.OnlyBefore, units);
        WriteOnly(page, "Only in the second", ledgers.OnlyAfter, units);
        page.Gap();
        page.Paragraph(Told(ledgers));
        return page.ToString();
    }

    private static string Counts(Ledger ledger) => string.Join(
        ", ", new[] { Verdict.Short, Verdict.Tight, Verdict.Unknown, Verdict.Clear }.Select(verdict => $"{ledger.Count(verdict)} {Words.Of(verdict)}"));

    private static void WriteDesigns(Page page, IReadOnlyList<DesignDifference> designs)
    {
        page.Gap();
        page.Line("What differs");
        if (designs.Count == 0)
            page.Paragraph("nothing: the two are the same", 2, 2);
        foreach (var difference in designs)
            page.Labelled(difference.Subject, difference.Text, 2, Math.Min(20, Math.Max(9, designs.Max(d => d.Subject.Length) + 2)));
    }

    private static void WriteChanges(Page page, string title, IReadOnlyList<EntryChange> changes, ShownUnits units)
    {
        if (changes.Count == 0)
            return;
        page.Gap();
        page.Line($"{title} ({changes.Count})");
        var pen = page.Pen;
        foreach (var change in changes.Take(Most))
        {
            var marks = change.Before.Verdict == change.After.Verdict
                ? pen.Mark(change.After.Verdict)
                : $"{pen.Mark(change.Before.Verdict)} {pen.Plain("→")} {pen.Mark(change.After.Verdict)}";
            page.Edges($"  {marks}  {change.After.Id}", Left(change, units));
        }

        More(page, changes.Count);
    }

    private static void WriteOnly(Page page, string title, IReadOnlyList<LedgerEntry> entries, ShownUnits units)
    {
        if (entries.Count == 0)
            return;
        page.Gap();
        page.Line($"{title} ({entries.Count})");
        foreach (var entry in entries.Take(Most))
            page.Edges($"  {page.Pen.Mark(entry.Verdict)}  {entry.Id}", Left(entry, units) is { } left ? $"{left} left" : "unknown");
        More(page, entries.Count);
    }

    /// <summary>What is left before and after a change, with its unit.</summary>
    public static string Left(EntryChange change, ShownUnits units)
    {
        var unit = units.Of(change.After.Unit);
        if (change.Before.Unit != change.After.Unit || change.Before.Left is null || change.After.Left is null)
            return $"{Left(change.Before, units) ?? "unknown"} → {Left(change.After, units) ?? "unknown"} left";
        var shown = Numbers.Together([unit.Difference(change.Before.Left), unit.Difference(change.After.Left)]);
        return $"{shown[0]} → {Numbers.WithUnit(shown[1], unit.Between)} left";
    }

    private static string? Left(LedgerEntry entry, ShownUnits units)
    {
        var unit = units.Of(entry.Unit);
        return unit.Difference(entry.Left) is { } left ? Numbers.Show(left, unit.Between) : null;
    }

    private static void More(Page page, int count)
    {
        if (count > Most)
            page.Line($"  {count - Most} more (--format json has all)");
    }

    private static string Told(LedgerDifference ledgers)
    {
        var better = ledgers.Verdicts.Count(change => change.After.Verdict < change.Before.Verdict);
        var worse = ledgers.Verdicts.Count - better;
        return ledgers.Verdicts.Count + ledgers.Much.Count + ledgers.OnlyBefore.Count + ledgers.OnlyAfter.Count == 0
            ? $"No limit changes by more than a tenth: {Words.Count(ledgers.Same, "entry is", "entries are")} the same, or nearly."
            : $"{Words.Count(better, "verdict", "verdicts")} better, {worse} worse; {Words.Count(ledgers.Same, "entry", "entries")} the same, or nearly.";
    }
}

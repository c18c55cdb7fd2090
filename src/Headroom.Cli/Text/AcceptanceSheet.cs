using Headroom.Domain.Jobs;
using Headroom.Engineering.Acceptance;

namespace Headroom.Cli.Text;

/// <summary>The tester's file beside the schedule, for people.</summary>
internal static class AcceptanceSheet
{
    private const int Names = 12;

    /// <summary>Writes it.</summary>
    public static string Write(AcceptanceResult result, string file, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{result.Job.Name} · {file}");
        page.Paragraph($"limit: {result.Limit}{(result.LimitAssumed ? " (the commonest in the file: nobody said which was agreed, --limit does)" : "")}");
        page.Gap();
        page.Paragraph($"{Words.Count(result.Drops.Count, "drop", "drops")}: {result.Count(DropStanding.Accepted)} accepted, {result.Count(DropStanding.Marginal)} marginal, {result.Count(DropStanding.Open)} open");
        foreach (var standing in new[] { DropStanding.Open, DropStanding.Marginal })
            WriteToldOf(page, result, standing);
        WriteNotes(page, "Failed and tested again, both records kept", result.Drops.Where(drop => drop.Retested).Select(drop => (drop.Id, string.Join(", then ", drop.Records.Select(Told)))));
        WriteNotes(page, "Pairs that differ", result.Drops.Where(drop => drop.Pairs.Count > 0).Select(drop => (drop.Id, string.Join(" ", drop.Pairs.Select(Words.Sentence)))));
        WriteNotes(page, "Labels that are no drop", result.Strange.Select(strange => (strange.Record.Label, strange.Near is { } near ? $"{Told(strange.Record)}; is {near} meant? it is not taken for it" : $"{Told(strange.Record)}; no drop is called so")));
        WriteNotes(page, "Saved twice, counted once", result.SavedTwice.Select(record => (record.Label, $"{Told(record)}, line {record.At.Line}")));
        return page.ToString();
    }

    private static void WriteToldOf(Page page, AcceptanceResult result, DropStanding standing) =>
        WriteNotes(page, Words.Sentence(AcceptanceWords.Of(standing)).TrimEnd('.'), result.Drops.Where(drop => drop.Standing == standing).Select(drop => (drop.Id, drop.Told)));

    private static void WriteNotes(Page page, string heading, IEnumerable<(string Name, string Text)> notes)
    {
        var all = notes.ToList();
        if (all.Count == 0)
            return;
        page.Gap();
        page.Line(heading);
        foreach (var (name, text) in all)
            page.Labelled(name, text, 2, Math.Max(Names, all.Max(note => Columns.Of(note.Name)) + 2));
    }

    private static string Told(TesterResult record)
    {
        var verdict = record.Verdict switch { TesterVerdict.Pass => "pass", TesterVerdict.Marginal => "pass*", _ => "fail" };
        var margin = record.MarginDecibels is { } decibels ? $" by {Numbers.Show(Math.Abs(decibels), "dB")}" : "";
        return $"{verdict}{margin}{(record.Metres is { } metres ? $" at {Numbers.Show(metres, "m")}" : "")}{(record.Day is { } day ? $" on {day}" : "")}";
    }
}

using System.Globalization;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>The ledger of one design as a sheet: what is short and what mends it, the table, and what stands behind it.</summary>
internal static class Sheet
{
    /// <summary>Writes the sheet.</summary>
    public static string Write(Ledger ledger, SheetRequest request, Pen pen)
    {
        var page = new Page(pen);
        WriteTitle(page, ledger);
        SheetSummary.Write(page, ledger);
        SheetTable.Write(page, ledger.Entries, request);
        SheetFigures.Write(page, ledger, request);
        SheetReadings.Write(page, ledger, request.Units);
        SheetNotes.Write(page, ledger);
        WriteCounts(page, ledger);
        WriteWhy(page, ledger, request);
        return page.ToString();
    }

    /// <summary>The first line of every sheet: job, design, day; a long name of the job is cut, so that the others stay.</summary>
    public static void WriteTitle(Page page, Ledger ledger)
    {
        var pen = page.Pen;
        var rest = pen.Plain($" · design {ledger.Design} · {ledger.On.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}");
        rest = Columns.Fit(rest, Pen.Columns / 2, pen.Cut);
        page.Line(Columns.Fit(pen.Plain(ledger.Job), Pen.Columns - Columns.Of(rest), pen.Cut) + rest);
    }

    private static void WriteCounts(Page page, Ledger ledger)
    {
        var count = ledger.Entries.Count;
        var counts = new[] { Verdict.Short, Verdict.Tight, Verdict.Clear, Verdict.Unknown }
            .Select(verdict => $"{ledger.Count(verdict)} {Words.Of(verdict)}");
        var overruled = ledger.Entries.Count(entry => entry.Overruled is not null);
        page.Gap();
        page.Paragraph($"{Words.Count(count, "entry", "entries")}: {string.Join(", ", counts)}" + (overruled == 0 ? "" : $" ({overruled} overruled)"));
    }

    private static void WriteWhy(Page page, Ledger ledger, SheetRequest request)
    {
        if (ledger.Entries.Count == 0)
            return;
        var worst = Words.Quoted(ledger.Entries[0].Id);
        var again = request.Again.Length == 0 ? "" : " " + request.Again;
        string[] tries =
        [
            $"Why: headroom explain {Words.Quoted(request.Job)} {worst}{again}",
            $"Why: headroom explain JOB {worst}{again}",
            $"Why: headroom explain JOB ENTRY{again}",
        ];
        var fits = Array.Find(tries, line => Columns.Of(page.Pen.Plain(line)) <= Pen.Columns);
        page.Line(page.Pen.Plain(fits ?? "Why: headroom explain JOB ENTRY, with the options given here"));
    }
}

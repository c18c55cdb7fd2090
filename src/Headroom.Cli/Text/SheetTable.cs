using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>The table of entries in the order of the ledger, worst first; what is clear beyond a screenful is counted instead.</summary>
internal static class SheetTable
{
    // What fits on a screen of 24 lines below a line or two of summary.
    private const int Screenful = 18;

    /// <summary>Writes the table.</summary>
    public static void Write(Page page, IReadOnlyList<LedgerEntry> entries, SheetRequest request)
    {
        if (entries.Count == 0)
            return;
        var shown = request.All ? entries : Choose(entries);
        var rows = shown.Select(entry => SheetRow.Of(entry, request.Units, page.Pen)).ToList();
        var layout = new SheetLayout(rows, page.Pen);
        page.Line(layout.Head());
        foreach (var row in rows)
            WriteRow(page, layout, row, request.Units);
        if (shown.Count < entries.Count)
            page.Paragraph(Folded([.. entries.Except(shown)]), 2, 2);
    }

    private static void WriteRow(Page page, SheetLayout layout, SheetRow row, ShownUnits units)
    {
        if (!row.Asks)
        {
            page.Line(layout.Figures(row));
        }
        else
        {
            var lines = Wrap.Lines(page.Pen.Plain(row.Question(units)), layout.Room);
            page.Line(layout.Name(row) + lines[0]);
            foreach (var line in lines.Skip(1))
                page.Line(new string(' ', layout.Indent) + line);
        }

        WriteRemarks(page, layout, row, units);
    }

    private static void WriteRemarks(Page page, SheetLayout layout, SheetRow row, ShownUnits units)
    {
        foreach (var line in EntryInWords.Remarks(row.Entry, units).SelectMany(remark => Wrap.Lines(page.Pen.Plain(remark), layout.Room)))
            page.Line(new string(' ', layout.Indent) + line);
    }

    // All that wants attention is shown however many there are; clear ones fill up the screen.
    private static List<LedgerEntry> Choose(IReadOnlyList<LedgerEntry> entries)
    {
        var room = Math.Max(0, Screenful - entries.Count(WantsAttention));
        return [.. entries.Where(entry => WantsAttention(entry) || room-- > 0)];
    }

    private static bool WantsAttention(LedgerEntry entry) =>
        entry.Verdict != Verdict.Clear || entry.Overruled is not null || entry.MayBeShort;

    private static string Folded(List<LedgerEntry> entries)
    {
        var kinds = entries.CountBy(entry => entry.Kind).OrderByDescending(kind => kind.Value).ThenBy(kind => kind.Key, StringComparer.Ordinal).Select(kind => $"{kind.Key} {kind.Value}");
        return $"{entries.Count} more clear: {string.Join(", ", kinds)} (--all lists them)";
    }
}

using Headroom.Cli.Text;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>How a sheet was understood, what is wrong with it, and what the job gets of it.</summary>
internal static class ImportReport
{
    private const int MostLines = 12;
    private const int Facts = 15;
    private const int Letters = 4;
    private const int Headings = 24;

    /// <summary>Writes it.</summary>
    public static string Write(ImportRequest request, ImportedSheet read, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{request.Sheet} as {request.Kind}");
        page.Gap();
        foreach (var (name, how) in read.Facts)
            page.Labelled(name, how, 2, Facts);
        page.Gap();
        WriteColumns(page, read.Columns);
        WriteRows(page, read);
        foreach (var finding in read.Findings)
            page.Line(pen.Plain(finding.ToString()));
        page.Gap();
        WriteChange(page, request, read);
        return page.ToString();
    }

    private static void WriteColumns(Page page, IReadOnlyList<ImportedColumn> columns)
    {
        foreach (var column in columns)
        {
            var heading = Columns.Left(Columns.Fit(page.Pen.Plain(column.Heading), Headings - 2, page.Pen.Cut), Headings);
            page.Line($"  {Columns.Left(column.Letters, Letters)}{heading}{Becomes(column)}");
        }

        page.Gap();
    }

    private static string Becomes(ImportedColumn column) => column switch
    {
        { Field: { } field, Unit: { } unit } => $"{field}, in {unit}",
        { Field: { } field } => field,
        { Aside: { } aside } => $"set aside ({aside})",
        _ => "taken for nothing",
    };

    private static void WriteRows(Page page, ImportedSheet read)
    {
        if (read.Rows > 0)
        {
            var taken = read.Rows - read.Left - read.PassedOver;
            string[] counts = [$"{taken} taken", read.PassedOver > 0 ? $"{read.PassedOver} that say nothing new" : "", read.Left > 0 ? $"{read.Left} left" : ""];
            page.Paragraph($"{Words.Count(read.Rows, "row", "rows")}: {string.Join(", ", counts.Where(count => count.Length > 0))}", 2, 4);
        }

        foreach (var (field, sum) in read.Sums)
            page.Labelled(field, sum, 2, Facts);
        page.Gap();
    }

    private static void WriteChange(Page page, ImportRequest request, ImportedSheet read)
    {
        if (read.Text is null)
        {
            var counts = FindingsReport.Counts(read.Findings);
            page.Paragraph($"{(counts.Length == 0 ? "Nothing to take over" : Words.Sentence(counts).TrimEnd('.'))}: {request.Job} is left as it is.");
            return;
        }

        page.Paragraph($"{request.Job} {(request.Writes ? "gets" : "would get")} {Words.Count(read.Lines.Count, "line", "lines")} under {read.Place}:");
        var shown = request.All || read.Lines.Count <= MostLines ? read.Lines.Count : MostLines - 1;
        foreach (var line in read.Lines.Take(shown))
            page.Line("  " + page.Pen.Plain(line));
        if (shown < read.Lines.Count)
            page.Line($"  and {read.Lines.Count - shown} more (--all lists them)");
        if (!request.Writes)
            page.Line("Nothing is written yet: --write does it.");
    }
}

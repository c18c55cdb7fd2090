using System.Globalization;
using Headroom.Cli.Many;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>Many jobs, one line each: its name, how many limits are short, tight, unknown and clear, and the worst of them.</summary>
internal static class FolderSheet
{
    private const int WidestName = 26;
    private const int Count = 8;
    private static readonly Verdict[] Order = [Verdict.Short, Verdict.Tight, Verdict.Unknown, Verdict.Clear];

    /// <summary>Writes them.</summary>
    public static string Write(StudiedFolder studied, Pen pen)
    {
        var page = new Page(pen);
        var name = Math.Clamp(studied.Jobs.Max(job => Columns.Of(pen.Plain(job.Name))), 3, WidestName);
        page.Line($"  {Columns.Left("job", name)}{string.Concat(Order.Select(verdict => Columns.Right(Words.Of(verdict), Count)))}  worst");
        foreach (var job in studied.Jobs)
            WriteJob(page, job, name);
        page.Gap();
        page.Paragraph(Sum(studied));
        if (studied.Jobs.FirstOrDefault(job => job.NotWorked is not null) is { } broken)
            page.Line(Columns.Fit(pen.Plain($"Why not: headroom check {Words.Quoted(broken.File)}"), Pen.Columns, pen.Cut));
        if (studied.Jobs.FirstOrDefault(job => job.NotWorked is null && job.Verdict != Verdict.Clear) is { } worst)
            page.Line(Columns.Fit(pen.Plain($"More: headroom study {Words.Quoted(worst.File)}"), Pen.Columns, pen.Cut));
        return page.ToString();
    }

    private static void WriteJob(Page page, StudiedJob job, int width)
    {
        var pen = page.Pen;
        var name = Columns.Left(Columns.FitMiddle(pen.Plain(job.Name), width, pen.Cut, "/"), width);
        if (job.NotWorked is { } why)
        {
            page.Line(Columns.Fit($"- {name}  not worked out: {pen.Plain(why)}", Pen.Columns, pen.Cut));
            return;
        }

        var counts = string.Concat(Order.Select(verdict => Columns.Right(job.Count(verdict).ToString(CultureInfo.InvariantCulture), Count)));
        page.Line($"{pen.Ink(job.Verdict, pen.Mark(job.Verdict))} {name}{counts}  {Worst(job, pen, Pen.Columns - 2 - width - counts.Length - 2)}");
    }

    private static string Worst(StudiedJob job, Pen pen, int room)
    {
        if (job.Worst is not { } worst)
            return Columns.Fit("no limit was found", room, pen.Cut);
        var unit = ShownUnits.Metric.Of(worst.Unit);
        var left = worst.Left is { } value ? "  " + pen.Plain(Numbers.Show(value, unit.Between)) : "";
        // The discipline is the part of an id that can be done without.
        var id = pen.Plain(worst.Id[(worst.Id.IndexOf('/', StringComparison.Ordinal) + 1)..]);
        return Columns.FitMiddle(id, room - Columns.Of(left), pen.Cut, "/") + left;
    }

    private static string Sum(StudiedFolder studied)
    {
        var parts = Order.Select(verdict => (Count: studied.Count(verdict), Word: Words.Of(verdict))).Append((studied.NotWorked, "not worked out"))
            .Where(part => part.Item1 > 0).Select(part => $"{part.Item1} {part.Item2}");
        return $"{Words.Count(studied.Jobs.Count, "job", "jobs")}: {string.Join(", ", parts)}";
    }
}

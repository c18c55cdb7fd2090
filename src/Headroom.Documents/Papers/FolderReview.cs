using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Pdf;
using Headroom.Domain.Firms;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>The page of a month over many jobs, for the firm's own eyes: what each brings, what is due, what was read and does not agree.</summary>
public static class FolderReview
{
    private const int MostDue = 24;
    private const int MostApart = 16;

    /// <summary>Writes it.</summary>
    /// <param name="jobs">The jobs, each by itself.</param>
    /// <param name="about">The folder as it was named, and the day for which it was worked out.</param>
    /// <param name="firm">The firm; null when nobody has said.</param>
    /// <param name="size">The sheets, upright.</param>
    public static WrittenPaper Write(IReadOnlyList<ReviewedJob> jobs, (string Folder, DateOnly On) about, Firm? firm, SheetSize size)
    {
        using var manner = firm?.Manner.Use();
        var title = $"Monthly review, {about.On.ToString("MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture)}";
        var paper = new Paper("monthly-review", title, [.. Blocks(jobs, about)])
        {
            OnItsSide = true, Inside = true, Foot = $"{(firm is null ? "" : FirmOnPapers.Short(firm) + " · ")}{Written.Count(jobs.Count, "job")} · {Written.Day(about.On)}", Head = firm is null ? null : FirmOnPapers.Head(firm) with { Lines = [] },
        };
        var sheets = Layouter.Lay(paper, size);
        return new("inside-monthly-review.pdf", PdfWriter.Write(new PdfAbout(title, firm?.Name ?? "", about.On) { House = firm?.Colour }, sheets), sheets.Count);
    }

    private static IEnumerable<Block> Blocks(IReadOnlyList<ReviewedJob> jobs, (string Folder, DateOnly On) about)
    {
        var worked = jobs.Where(job => job.NotWorked is null).ToList();
        yield return new Facts([("worked out", $"{Numbers.Show(worked.Count)} of {Written.Count(jobs.Count, "job")}"), ("looked over by", "")]);
        if (worked.Count > 0)
        {
            yield return new Heading("Jobs");
            yield return new Table(
                [
                    new("job") { Grows = true }, new("design"), new("short", Anchor.End), new("tight", Anchor.End), new("unknown", Anchor.End), new("offered without tax", Anchor.End), new("in the end", Anchor.End),
                    new("margin", Anchor.End), new("in the end", Anchor.End), new("hours", Anchor.End), new("in the end", Anchor.End),
                ],
                [.. worked.Select(job => Row.Of([job.Name, .. job.Cells]))]);
        }

        foreach (var block in Due(worked).Concat(Readings(worked)).Concat(Models(worked)))
            yield return block;
        var left = jobs.Where(job => job.NotWorked is not null).ToList();
        if (left.Count > 0)
        {
            yield return new Heading("Not worked out");
            yield return new Table([new("job"), new("why") { Grows = true }], [.. left.Select(job => Row.Of(job.Name, job.NotWorked!))]);
        }

        yield return new Heading("What follows from it");
        yield return new Table([new("drop a model, raise a reserve, change a price, stock a spare, go there before it fails") { Grows = true }, new("by") { Least = 60 }, new("until") { Least = 60 }], [.. Written.Blank(4)]);
    }

    private static IEnumerable<Block> Due(IReadOnlyList<ReviewedJob> jobs)
    {
        var due = jobs.SelectMany(job => job.Due.Select(one => (one.On, one.What, one.Where, Job: job.Name))).OrderBy(one => one.On).ThenBy(one => one.Job, StringComparer.Ordinal).ToList();
        yield return new Heading($"Due within {MonthlyReview.DaysAhead} days");
        if (due.Count == 0)
            yield return new Words("Nothing of which the day is known.");
        else
            yield return new Table([Written.TickColumn, new("day"), new("job"), new("what"), new("where") { Grows = true }, new("who") { Least = 80 }], [.. due.Take(MostDue).Select(one => Written.ToTick(Written.Day(one.On), one.Job, one.What, one.Where))]);
        if (due.Count > MostDue)
            yield return new Words($"And {Numbers.Show(due.Count - MostDue)} more, which the maintenance schedules of the jobs have.", Lettering.Label);
    }

    private static IEnumerable<Block> Readings(IReadOnlyList<ReviewedJob> jobs)
    {
        var (apart, read) = (jobs.SelectMany(job => job.Apart).ToList(), jobs.Sum(job => job.Read));
        yield return new Heading("Worked out and read");
        if (read == 0)
        {
            yield return new Words("Nothing was read at these sites yet: what do the ports give, how warm is it, what is heard?", Lettering.Body with { Face = Face.Slanted });
            yield break;
        }

        if (apart.Count > 0)
            yield return new Table(
                [new("job"), new("where"), new("what"), new("worked out", Anchor.End), new("read", Anchor.End), new("apart", Anchor.End), new("unit"), new("what it means") { Grows = true }], [.. apart.Take(MostApart)]);
        yield return new Words($"{Numbers.Show(read - apart.Count)} of {Written.Count(read, "reading")} agree with what was worked out.{(apart.Count > MostApart ? $" {Numbers.Show(apart.Count - MostApart)} more do not; the calculation books have them." : "")}", Lettering.Label);
    }

    // Several jobs may hold the firm's list; a row that says the same is told once.
    private static IEnumerable<Block> Models(IReadOnlyList<ReviewedJob> jobs)
    {
        var models = jobs.SelectMany(job => job.Models).DistinctBy(row => string.Join('\n', row.Cells.Select(cell => cell.Text))).ToList();
        if (models.Count == 0)
            yield break;
        yield return new Heading("Models in the field");
        yield return new Table(
            [new("model") { Grows = true }, new("in the field", Anchor.End), new("together in service", Anchor.End), new("failed", Anchor.End), new("of them in hot places", Anchor.End), new("on the shelf", Anchor.End), new("supplier takes", Anchor.End)], models);
    }
}

using Headroom.Cli.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Remedies;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>Writes a remedy into the job file as a design that is like the one it mends.</summary>
internal static class RemedyTaking
{
    /// <summary>Writes it; says what was written, or why nothing was.</summary>
    public static int Take(string job, (Job Job, Catalogue Models) read, RemedyResult result, (int Number, string? Name) asked, Desk desk)
    {
        var path = JobSource.PathOf(job);
        if (Complaint(job, read.Job, result, asked) is { } complaint)
        {
            desk.Err.WriteLine($"headroom: {complaint}");
            return ExitCode.NotWorked;
        }

        var remedy = result.Remedies[asked.Number - 1];
        var design = remedy.Change with { Id = asked.Name ?? FreeName(read.Job, result.Before.Design) };
        var recorded = JobRecord.AddDesign(path, design, read.Models);
        var failed = recorded is { Before: { } before, Text: { } text } ? JobWriting.Complaint(path, before, text) : $"{FindingsReport.Counts(recorded.Findings)}: {path} is left as it is";
        if (failed is not null)
        {
            foreach (var finding in recorded.Findings)
                desk.Err.WriteLine(finding.ToString());
            desk.Err.WriteLine($"headroom: {failed}");
            return ExitCode.NotWorked;
        }

        desk.Out.Write(Told(job, remedy, design, desk.Pen));
        return Worked.ExitCodeOf(remedy.After, strict: false);
    }

    private static string? Complaint(string job, Job read, RemedyResult result, (int Number, string? Name) asked)
    {
        var count = result.Remedies.Count;
        if (job == "-")
            return "--take writes into a job file; standard input has none";
        if (count == 0)
            return $"there is no remedy to take for design {result.Before.Design}";
        if (asked.Number > count)
            return $"there is no remedy {asked.Number}: design {result.Before.Design} has {(count == 1 ? "only remedy 1" : $"remedies 1 to {count}")}";
        return read.Designs.Any(design => design.Id == asked.Name) ? $"the job has a design '{asked.Name}' already; give another name with --as" : null;
    }

    private static string FreeName(Job job, string design)
    {
        for (var number = 2; ; number++)
        {
            if (job.Designs.All(other => other.Id != $"{design}-{number}"))
                return $"{design}-{number}";
        }
    }

    private static string Told(string job, Remedy remedy, Design design, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"Design {design.Id} is written, like {design.Like}: {remedy.Text}.");
        var counts = new[] { Verdict.Short, Verdict.Tight, Verdict.Unknown }.Select(verdict => $"{remedy.After.Count(verdict)} {Words.Of(verdict)}");
        page.Paragraph($"As studied it has {string.Join(", ", counts)}; {Words.Count(remedy.After.Count(Verdict.Clear), "entry", "entries")} clear.");
        page.Line($"See it:  headroom study {Words.Quoted(job)} --design {design.Id}");
        page.Line($"Go on:   headroom remedies {Words.Quoted(job)} --design {design.Id}");
        return page.ToString();
    }
}

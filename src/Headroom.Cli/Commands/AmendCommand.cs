using System.CommandLine;
using Headroom.Cli.Text;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom amend JOB FILE</c>: parse, read, print what differs, write when asked to.</summary>
internal static class AmendCommand
{
    private static readonly string[] Notes =
    [
        "FILE is a workbook as 'headroom workbook' writes it, or one of its tables as CSV. Read are drops, endpoints and patching; the other sheets are worked out from them. Only what differs is changed in the job file, all or nothing; a row that is gone is asked about, and taken out only where it is named.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "amend",
            "Shows what was changed in an edited workbook or CSV, and takes it back into a job",
            "JOB FILE",
            "headroom amend job.yaml schedules.xlsx",
            "headroom amend job.yaml tables/drops.csv --as drops --write") { Notes = Notes };
        var words = new WordArgument("a JOB and a FILE", 2, 2).AddTo(command);
        var kind = new ValueOption("--as", string.Join('|', JobAmending.Kinds), "which table it is; a workbook says it itself").OneOf([.. JobAmending.Kinds]);
        var catalogue = new ValueOption("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
        var gone = new ValueOption("--take-out", "NAME,...", "takes things out of the job whose rows are gone");
        var write = new FlagOption("--write", "writes the changes into the job file");
        command.Add(kind);
        command.Add(catalogue);
        command.Add(gone);
        command.Add(write);
        command.SetAction(parsed =>
        {
            var (job, file) = (JobSource.PathOf(parsed.GetValue(words)![0]), parsed.GetValue(words)![1]);
            var models = JobSource.Models(catalogue.All(parsed));
            if (models is not { Ok: true, Value: { } known })
            {
                FindingsReport.Write(desk.Err, models.Findings);
                return ExitCode.NotWorked;
            }

            var amended = JobAmending.Read(job, new AmendPlan(file, kind.One(parsed)) { TakeOut = gone.One(parsed)?.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [] }, known);
            Tell(desk, (job, parsed.GetValue(write)), amended);
            if (amended.Findings.Any(FindingsReport.IsError))
                return ExitCode.NotWorked;
            if (!parsed.GetValue(write) || amended.Text is null || JobWriting.Complaint(job, amended.Before!, amended.Text) is not { } complaint)
                return ExitCode.NothingShort;
            desk.Err.WriteLine($"headroom: {complaint}");
            return ExitCode.NotWorked;
        });
        return command;
    }

    private static void Tell(Desk desk, (string Job, bool Writes) asked, AmendedJob amended)
    {
        var page = new Page(desk.Pen);
        if (amended.Read.Count > 0)
            page.Paragraph($"Read: {string.Join(", ", amended.Read)}.{(amended.NotRead.Count > 0 ? $" Not read, since worked out: {string.Join(", ", amended.NotRead)}." : "")}");
        page.Gap();
        foreach (var change in amended.Changes)
            page.Line("  " + desk.Pen.Plain(change));
        foreach (var finding in amended.Findings)
            page.Line(desk.Pen.Plain(finding.ToString()));
        page.Gap();
        var counts = FindingsReport.Counts([.. amended.Findings.Where(FindingsReport.IsError)]);
        page.Paragraph(counts.Length > 0 ? $"{Words.Sentence(counts).TrimEnd('.')}: {asked.Job} is left as it is."
            : amended.Text is null ? $"Nothing differs from {asked.Job}."
            : $"{asked.Job} {(asked.Writes ? "gets" : "would get")} {Words.Count(amended.Changes.Count, "change", "changes")}{(asked.Writes ? "." : "; --write writes them.")}");
        desk.Out.Write(page.ToString());
    }
}

using System.CommandLine;
using Headroom.Cli.Many;
using Headroom.Documents.Drawings;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Firms;
using Words = Headroom.Cli.Text.Words;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom papers JOB --out DIR</c>: parse, read, study, write the papers.</summary>
internal static class PapersCommand
{
    private static readonly string[] Notes =
    [
        "All papers are written aside and moved into the folder together; one that is there already is replaced.",
        "What is inside, such as cost and margin, is on no paper for the client.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "papers",
            "Writes the papers of a job: for the client, the bench, the site, and to keep",
            "JOB",
            "headroom papers examples/barn-vets/job.yaml --out papers",
            "headroom papers job.yaml --out papers --only quotation --firm firm.yaml") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var folder = new ValueOption("--out", "DIR", "the folder to write into, made when it is not there");
        var only = new ValueOption("--only", "PAPER,...", $"some of the {PaperList.All.Count} papers that docs/papers.md tells");
        only.Checked(given => given.Split(',').Select(name => ValueOption.Complaint(name.Trim(), [.. PaperList.All.Select(kind => kind.Id)])).FirstOrDefault(problem => problem is not null));
        var size = new ValueOption("--paper", string.Join('|', SheetSize.All.Select(one => one.Name)), "size of the sheets; otherwise the client's, else A4");
        size.OneOf([.. SheetSize.All.Select(one => one.Name)]);
        var firm = new FirmOption();
        var number = new ValueOption("--number", "TEXT", "the running number of the quotation");
        var options = new StudyOptions("text");
        command.Add(folder);
        command.Add(only);
        command.Add(size);
        command.Add(firm);
        command.Add(number);
        options.AddTo(command, "--only", "--format");
        command.SetAction(parsed =>
        {
            if (folder.One(parsed) is not { } into)
            {
                desk.Err.WriteLine("headroom: papers needs --out DIR, the folder to write into");
                return ExitCode.NotWorked;
            }

            if (!firm.TryRead(parsed, desk, out var own))
                return ExitCode.NotWorked;
            using var manner = own?.Manner.Use();
            if (JobFolder.IsOfMany(parsed.GetValue(job)![0]))
                return OfMany((parsed.GetValue(job)![0], only.One(parsed), into), (options, parsed), (own, SizeOf(size.One(parsed))), desk);
            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked)
                return ExitCode.NotWorked;
            if (PaperInputs.Of(asked, (own, options.Units(parsed, own)), desk) is not { } read)
                return ExitCode.NotWorked;
            var kinds = only.One(parsed) is { } names ? names.Split(',').Select(name => PaperList.Find(name.Trim())!).ToList() : PaperList.All;
            IReadOnlyCollection<PlannedFor> needs = only.One(parsed) is null ? [] : [.. kinds.SelectMany(kind => kind.Needs).Distinct()];
            if (PlannedInputs.Add(read with { QuoteCount = number.One(parsed) }, needs, (asked, null), desk) is not { } input)
                return ExitCode.NotWorked;
            return Write(PaperPack.Write(input, kinds, SizeOf(size.One(parsed) ?? input.Job.Client?.Paper)), into, desk);
        });
        return command;
    }

    private static int OfMany((string Jobs, string? Only, string Into) asked, (StudyOptions Options, ParseResult Parsed) with, (Firm? Firm, SheetSize Size) on, Desk desk)
    {
        if (asked.Only != FolderReviewCommand.Paper)
        {
            desk.Err.WriteLine($"headroom: there is no job.yaml in {asked.Jobs}; name a job file, or with --only {FolderReviewCommand.Paper} a folder in which jobs lie");
            return ExitCode.NotWorked;
        }

        return FolderReviewCommand.Write(asked.Jobs, with, on, desk) is { } review ? Write(new WrittenPapers([review], []), asked.Into, desk) : ExitCode.NotWorked;
    }

    private static SheetSize SizeOf(string? name) => SheetSize.All.FirstOrDefault(size => size.Name == name) ?? SheetSize.A4;

    private static int Write(WrittenPapers papers, string folder, Desk desk)
    {
        if (PaperFolder.Complaint(folder, papers.Papers) is { } complaint)
        {
            desk.Err.WriteLine($"headroom: {complaint}");
            return ExitCode.NotWorked;
        }

        foreach (var paper in papers.Papers)
            desk.Out.WriteLine(paper.Sheets == 0 ? Path.Combine(folder, paper.Name) : $"{Path.Combine(folder, paper.Name)}, {Words.Count(paper.Sheets, "sheet", "sheets")}");
        foreach (var missing in papers.Missing)
            desk.Out.WriteLine($"not written: {missing.Id}, {missing.Why}");
        return ExitCode.NothingShort;
    }
}

using System.CommandLine;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Engineering;
using Words = Headroom.Cli.Text.Words;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom papers JOB --out DIR</c>: parse, read, study, write the papers.</summary>
internal static class PapersCommand
{
    private static readonly string[] Notes =
    [
        "All papers are written aside and moved into the folder together; one that is there already is replaced.",
        "What is inside, such as cost and margin, stands on papers for the firm alone, and on no paper for the client.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "papers",
            "Writes the papers of a job: for the client, the bench, the site, and to keep",
            "JOB",
            "headroom papers examples/barn-vets/job.yaml --out papers",
            "headroom papers job.yaml --out papers --only limits --paper Letter") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var folder = new ValueOption("--out", "DIR", "the folder to write into; it is made when it is not there");
        var only = new ValueOption("--only", "PAPER,...", $"only some of the {PaperList.All.Count} papers, which docs/papers.md tells: limits, quotation, door-sheet ...");
        only.Checked(given => given.Split(',').Select(name => ValueOption.Complaint(name.Trim(), [.. PaperList.All.Select(kind => kind.Id)])).FirstOrDefault(problem => problem is not null));
        var size = new ValueOption("--paper", string.Join('|', SheetSize.All.Select(one => one.Name)), "the size of the sheets; otherwise the client's, else A4");
        size.OneOf([.. SheetSize.All.Select(one => one.Name)]);
        var options = new StudyOptions("text");
        command.Add(folder);
        command.Add(only);
        command.Add(size);
        options.AddTo(command, "--only", "--format");
        command.SetAction(parsed =>
        {
            if (folder.One(parsed) is not { } into)
            {
                desk.Err.WriteLine("headroom: papers needs --out DIR, the folder to write into");
                return ExitCode.NotWorked;
            }

            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked)
                return ExitCode.NotWorked;
            var input = Input(asked, options.Units(parsed));
            var kinds = only.One(parsed) is { } names ? names.Split(',').Select(name => PaperList.Find(name.Trim())!).ToList() : PaperList.All;
            return Write(PaperPack.Write(input, kinds, SizeOf(size.One(parsed) ?? input.Job.Client?.Paper)), into, desk);
        });
        return command;
    }

    private static PaperInput Input(AskedStudy asked, ShownUnits units)
    {
        var results = Study.Results(asked.Job, asked.Models, asked.Request);
        return new PaperInput(asked.Job, results, Study.LedgerOf(results, asked.Request)) { Request = asked.Request, Units = units };
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

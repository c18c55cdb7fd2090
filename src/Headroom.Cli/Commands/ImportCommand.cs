using System.CommandLine;
using Headroom.Cli.Text;
using Headroom.Domain.Findings;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom import JOB SHEET --as KIND</c>: parse, read, print what was understood, write when asked to.</summary>
internal static class ImportCommand
{
    private static readonly string[] Notes =
    [
        "SHEET is a CSV file as spreadsheet programs save it; it is never changed. With --write its rows go into the job file, all or none, and everything else stays as it was. To read it with the job each time, name it there under 'sheets:' (docs/sheets.md).",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "import",
            "Shows how a sheet of drops, endpoints, patching, prices or readings is understood, and takes it over into a job",
            "JOB SHEET --as KIND",
            "headroom import job.yaml drops.csv --as drops --otherwise from=cupboard",
            "headroom import job.yaml patching.csv --as patching --write") { Notes = Notes };
        var words = new WordArgument("a JOB and a SHEET", 2, 2).AddTo(command);
        var options = new ImportOptions();
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            var (job, sheet) = (JobSource.PathOf(parsed.GetValue(words)![0]), parsed.GetValue(words)![1]);
            if (options.Kind(parsed) is not { } kind)
                return Complain(desk, $"import needs --as {Words.Or(SheetImport.Kinds)}: what are the rows of {sheet}?");
            var models = JobSource.Models(options.Catalogues(parsed));
            if (models is not { Ok: true, Value: { } catalogue })
                return Refuse(desk, models.Findings);
            var read = SheetImport.Read(job, options.Plan(parsed, sheet, kind), catalogue);
            desk.Out.Write(ImportReport.Write(new ImportRequest(job, sheet, kind, options.All(parsed), options.Writes(parsed)), read, desk.Pen));
            return read.Text is null ? ExitCode.NotWorked : options.Writes(parsed) ? Write(job, read, desk) : ExitCode.NothingShort;
        });
        return command;
    }

    private static int Write(string job, ImportedSheet read, Desk desk) =>
        JobWriting.Complaint(job, read.Before!, read.Text!) is { } complaint ? Complain(desk, complaint) : ExitCode.NothingShort;

    private static int Complain(Desk desk, string complaint)
    {
        desk.Err.WriteLine($"headroom: {complaint}");
        return ExitCode.NotWorked;
    }

    private static int Refuse(Desk desk, IReadOnlyList<Finding> findings)
    {
        FindingsReport.Write(desk.Err, findings);
        return ExitCode.NotWorked;
    }
}

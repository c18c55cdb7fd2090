using System.CommandLine;
using Headroom.Cli.Csv;
using Headroom.Cli.Json;
using Headroom.Cli.Many;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom study JOB</c>: parse, read, study, print.</summary>
internal static class StudyCommand
{
    private static readonly string[] Notes =
    [
        "JOB is a job file, a folder that holds job.yaml, or - for standard input. The result goes to standard output, findings to standard error.",
        "A folder without job.yaml is studied job by job, every job.yaml and other job file below it, one line each; units and --all do not matter there.",
        "It ends with 0 when nothing is short, 1 when something is, 2 when it could not be worked out.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "study",
            "Works out every limit of a design and what is left of it",
            "JOB",
            "headroom study examples/barn-vets/job.yaml",
            "headroom study examples",
            "headroom study job.yaml --count sw-1=port-limit --format csv") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var options = new StudyOptions("text", "json", "csv");
        var strict = new FlagOption("--strict", "what is unknown counts as short");
        var all = new FlagOption("--all", "lists everything, however long it gets");
        options.AddTo(command);
        command.Add(strict);
        command.Add(all);
        command.SetAction(parsed =>
        {
            var name = parsed.GetValue(job)![0];
            if (JobFolder.IsOfMany(name))
                return FolderCommand.Run(name, (options, parsed), parsed.GetValue(strict), desk);
            if (Worked.Out(name, options, parsed, desk) is not { } ledger)
                return ExitCode.NotWorked;
            var sheet = new SheetRequest(name, options.Again(parsed), parsed.GetValue(all), options.Units(parsed));
            desk.Out.Write(Render(ledger, options.Format(parsed), sheet, desk.Pen));
            return Worked.ExitCodeOf(ledger, parsed.GetValue(strict));
        });
        return command;
    }

    private static string Render(Ledger ledger, string format, SheetRequest sheet, Pen pen) => format switch
    {
        "json" => LedgerJson.Write(ledger, workings: false),
        "csv" => LedgerCsv.Write(ledger.Entries),
        _ => Sheet.Write(ledger, sheet, pen),
    };
}

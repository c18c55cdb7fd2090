using System.CommandLine;
using Headroom.Cli.Csv;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Engineering.Acceptance;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom accept JOB RESULTS</c>: parse, read both, set them side by side, print.</summary>
internal static class AcceptCommand
{
    private static readonly string[] Notes =
    [
        "RESULTS is the CSV file that a cable tester's program writes, with label, result and limit in every row; it is never changed. Labels are compared character for character.",
        "It ends with 0 when every drop is accepted or marginal, 1 when one is open, 2 when it could not be worked out.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "accept",
            "Sets the records of a cable tester beside the drops of a job: accepted, marginal, open",
            "JOB RESULTS",
            "headroom accept examples/barn-vets/job.yaml examples/barn-vets/tester.csv",
            "headroom accept job.yaml results.csv --format csv") { Notes = Notes };
        var words = new WordArgument("a JOB and its RESULTS", 2, 2).AddTo(command);
        var limit = new ValueOption("--limit", "NAME", "the limit agreed with the client, as the tester calls it; otherwise the commonest in the file");
        var column = PairOption.Of("--column", "HEADING=FIELD", "which field a column becomes, where the usual words do not tell: 'Cable ID=label', Owner=none");
        var format = new ValueOption("--format", "text|json|csv", "text for people, json or csv for programs").OneOf("text", "json", "csv");
        var catalogue = new ValueOption("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
        foreach (var option in new Option[] { limit, column, format, catalogue })
            command.Add(option);
        command.SetAction(parsed =>
        {
            var named = parsed.GetValue(words)!;
            var job = JobSource.Read(named[0], catalogue.All(parsed), desk, out var models);
            var records = TesterFile.Read(named[1], PairOption.All(column.All(parsed)));
            FindingsReport.Write(desk.Err, [.. job.Findings, .. records.Findings]);
            if (!job.Ok || !records.Ok || models is null)
                return ExitCode.NotWorked;
            var result = AcceptanceStudy.Of(job.Value!, models, records.Value!, limit.One(parsed));
            desk.Out.Write(Render(result, (format.One(parsed), named[1]), desk.Pen));
            return result.Count(DropStanding.Open) > 0 ? ExitCode.Short : ExitCode.NothingShort;
        });
        return command;
    }

    private static string Render(AcceptanceResult result, (string? Format, string File) wanted, Pen pen) => wanted.Format switch
    {
        "json" => AcceptanceJson.Write(result),
        "csv" => AcceptanceCsv.Write(result),
        _ => AcceptanceSheet.Write(result, wanted.File, pen),
    };
}

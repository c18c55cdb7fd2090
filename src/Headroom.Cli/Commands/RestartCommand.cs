using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Engineering;
using Headroom.Engineering.Standby;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom restart JOB</c>: parse, read, play through, print.</summary>
internal static class RestartCommand
{
    private static readonly string[] Notes =
    [
        "Everything was off and the mains comes back at 0:00. Times are from then; one with 'or later' waits for something nobody knows.",
        "It ends with 0 when everything comes up, 1 when something stays dark, 2 when it could not be worked out.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "restart",
            "Tells what happens when the power comes back: who is up when, who stays dark",
            "JOB",
            "headroom restart examples/barn-vets/job.yaml",
            "headroom restart job.yaml --count sw-1=measured --format json") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var options = new StudyOptions("text", "json");
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (Out(parsed.GetValue(job)![0], (options, parsed), desk) is not { } result)
                return ExitCode.NotWorked;
            var on = options.Request(parsed, desk.Today).On;
            desk.Out.Write(options.Format(parsed) == "json" ? RestartJson.Write(result, on) : RestartSheet.Write(result, on, desk.Pen));
            return result.Restart.Units.Any(unit => unit.Dark.Count > 0) ? ExitCode.Short : ExitCode.NothingShort;
        });
        return command;
    }

    private static StandbyResult? Out(string job, (StudyOptions Options, ParseResult Parsed) asked, Desk desk)
    {
        var read = JobSource.Read(job, asked.Options.Catalogues(asked.Parsed), desk, out var models, asked.Options.Rates(asked.Parsed));
        FindingsReport.Write(desk.Err, read.Findings);
        if (!read.Ok || models is null)
            return null;
        var request = asked.Options.Request(asked.Parsed, desk.Today);
        if (DesignChoice.Complaint(read.Value!, request) is not { } complaint)
            return FirmRecord.Add(request, asked.Options.Readings(asked.Parsed), desk) is { } whole ? Study.Outage(read.Value!, models, whole) : null;
        desk.Err.WriteLine($"headroom: {complaint}");
        return null;
    }
}

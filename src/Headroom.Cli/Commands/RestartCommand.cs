using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Engineering;

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
            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked)
                return ExitCode.NotWorked;
            var result = Study.Results(asked.Job, asked.Models, asked.Request).Standby;
            var on = asked.Request.On;
            desk.Out.Write(options.Format(parsed) == "json" ? RestartJson.Write(result, on) : RestartSheet.Write(result, on, desk.Pen));
            return result.Restart.Units.Any(unit => unit.Dark.Count > 0) ? ExitCode.Short : ExitCode.NothingShort;
        });
        return command;
    }
}

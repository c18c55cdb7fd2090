using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Planning;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom turn JOB</c>: parse, read, prove again and again, print.</summary>
internal static class TurnCommand
{
    private static readonly string[] Notes =
    [
        "WHAT is draw:MODEL, price:MODEL, count:KIND, noise:LISTENER, runtime, reserve or reserve:KIND; without any the usual ones are turned.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "turn",
            "Finds the value of something at which the cheapest design changes",
            "JOB",
            "headroom turn examples/barn-vets/job.yaml --what draw:bulrush",
            "headroom turn job.yaml --what price:wren --what noise:desk --format json") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var what = new ValueOption("--what", "WHAT", "what is turned; may be repeated", often: true);
        var options = new PlanOptions();
        command.Add(what);
        options.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetValue(job)![0], what.All(parsed), (options, parsed), desk));
        return command;
    }

    private static int Run(string name, string[] what, (PlanOptions Options, ParseResult Parsed) asked, Desk desk)
    {
        using var stop = new PlanStop();
        if (asked.Options.Read(name, asked.Parsed, desk) is not { } read || asked.Options.Request(asked.Parsed, desk, stop) is not { } request)
            return ExitCode.NotWorked;
        var (points, complaints) = Planner.Turn(read.Job, read.Models, request, what);
        if (desk.SomebodyLooksOn)
            desk.Err.WriteLine();
        foreach (var complaint in complaints)
            desk.Err.WriteLine($"headroom: {complaint}");
        if (complaints.Count > 0)
            return ExitCode.NotWorked;
        desk.Out.Write(asked.Options.IsJson(asked.Parsed) ? TurnJson.Write(read.Job.Name, request.On, points) : TurnSheet.Write(read.Job.Name, request.On, points, desk.Pen));
        return points.Count == 0 ? ExitCode.Short : ExitCode.NothingShort;
    }
}

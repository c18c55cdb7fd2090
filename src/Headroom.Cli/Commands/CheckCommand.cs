using System.CommandLine;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom check JOB</c>: parse, read, print what was found. The findings are the result.</summary>
internal static class CheckCommand
{
    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "check",
            "Says whether a job file holds together, all findings in one go, without working it out",
            "JOB",
            "headroom check examples/barn-vets/job.yaml")
        {
            Notes = ["Each finding is one line: file:line:column, what was given, what is allowed, what to do. It ends with 2 when one is an error, otherwise with 0."],
        };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var catalogue = new ValueOption("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
        command.Add(catalogue);
        command.SetAction(parsed =>
        {
            var name = parsed.GetValue(job)![0];
            var read = JobSource.Read(name, catalogue.All(parsed), desk, out _);
            return CheckReport.Write(desk.Out, name == "-" ? "standard input" : name, read.Findings);
        });
        return command;
    }
}

using System.CommandLine;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom check JOB</c>: parse, read, print what was found. The findings are the result.</summary>
internal static class CheckCommand
{
    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "check",
            "Says whether a job file, or a firm file, holds together, all findings in one go",
            "JOB",
            "headroom check examples/barn-vets/job.yaml")
        {
            Notes = ["Each finding is one line: file:line:column, what was given, what is allowed, what to do. It ends with 2 when one is an error, otherwise with 0."],
        };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var catalogue = new ValueOption("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
        command.Add(catalogue);
        command.SetAction(parsed => Run(parsed.GetValue(job)![0], catalogue.All(parsed), desk));
        return command;
    }

    /// <summary>Checks a job.</summary>
    /// <param name="job">The job as named.</param>
    /// <param name="catalogues">The firm's own catalogue files.</param>
    /// <param name="desk">Where to read and write.</param>
    public static int Run(string job, IReadOnlyList<string> catalogues, Desk desk)
    {
        if (job != "-" && FirmFile.Is(JobSource.PathOf(job)))
            return CheckReport.Write(desk.Out, job, FirmFile.Read(job).Findings);
        var read = JobSource.Read(job, catalogues, desk, out _);
        return CheckReport.Write(desk.Out, job == "-" ? "standard input" : job, read.Findings);
    }
}

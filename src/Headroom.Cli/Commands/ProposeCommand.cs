using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Planning;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom propose JOB</c>: parse, read, plan, print, and write where asked to.</summary>
internal static class ProposeCommand
{
    private static readonly string[] Notes =
    [
        "It ends with 0 when there are designs, 1 when none is possible, else 2.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "propose",
            "Finds the cheapest designs that keep every reserve, and says why no cheaper one does",
            "JOB",
            "headroom propose examples/barn-vets/job.yaml",
            "headroom propose job.yaml --fanless --write") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var options = new PlanOptions();
        var write = new FlagOption("--write", "puts the designs into the job file; all else stays");
        options.AddTo(command);
        command.Add(write);
        command.SetAction(parsed => Run(parsed.GetValue(job)![0], (options, parsed, parsed.GetValue(write)), desk));
        return command;
    }

    private static int Run(string name, (PlanOptions Options, ParseResult Parsed, bool Write) asked, Desk desk)
    {
        using var stop = new PlanStop();
        if (asked.Options.Read(name, asked.Parsed, desk) is not { } read || asked.Options.Request(asked.Parsed, desk, stop) is not { } request)
            return ExitCode.NotWorked;
        var plan = Planner.Propose(read.Job, read.Models, request);
        if (desk.SomebodyLooksOn)
            desk.Err.WriteLine();
        foreach (var complaint in plan.Complaints)
            desk.Err.WriteLine($"headroom: {complaint}");
        if (plan.Complaints.Count > 0)
            return ExitCode.NotWorked;
        desk.Out.Write(asked.Options.IsJson(asked.Parsed) ? PlanJson.Write(plan) : PlanSheet.Write(plan, desk.Pen));
        if (plan.Proposals.Count == 0)
            return ExitCode.Short;
        return asked.Write ? Put(name, (read.Job, plan, request), desk) : ExitCode.NothingShort;
    }

    private static int Put(string name, (Job Job, Plan Plan, PlanRequest Request) worked, Desk desk)
    {
        if (PlanWriting.Complaint(JobSource.PathOf(name), worked.Job, worked.Plan, worked.Request.Today, desk) is not { } complaint)
            return ExitCode.NothingShort;
        desk.Err.WriteLine($"headroom: {complaint}");
        return ExitCode.NotWorked;
    }
}

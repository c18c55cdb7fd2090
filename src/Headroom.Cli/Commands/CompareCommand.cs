using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Rules;
using Headroom.Engineering;
using Headroom.Engineering.Differences;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom compare JOB A B</c> and <c>headroom compare JOB [DESIGN] --swap MODEL=OTHER</c>: parse, read, study twice, compare, print.</summary>
internal static class CompareCommand
{
    private static readonly string[] Notes =
    [
        "Without --swap two designs are compared, A with B. With it a copy of the design has one model in the place of another, wherever the design or the survey has it; readings are left out on both sides, as they are of what stood there before.",
        "Exit codes are those of study, for the second.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "compare",
            "Compares two designs of a job, or a design with one in which a model is swapped",
            "JOB A B | JOB [DESIGN] --swap MODEL=OTHER",
            "headroom compare examples/barn-vets/job.yaml as-offered mended",
            "headroom compare examples/barn-vets/job.yaml --swap wren-b=redshank") { Notes = Notes };
        var words = new WordArgument("a JOB and two designs", 1, 3).AddTo(command);
        var swap = new ValueOption("--swap", "MODEL=OTHER", "a model in the place of another; may be repeated", often: true).Checked(ComplaintOf);
        var options = new StudyOptions("text", "json");
        command.Add(swap);
        options.AddTo(command, "--design");
        command.Validators.Add(result =>
        {
            var given = result.GetResult(words)?.Tokens.Count ?? 0;
            var swaps = result.GetResult(swap) is not null;
            if (given > 0 && (swaps ? given > 2 : given != 3))
                result.AddError(swaps ? "compare takes a JOB and one DESIGN with --swap" : "compare needs a JOB and two designs, or --swap MODEL=OTHER");
        });
        command.SetAction(parsed =>
        {
            var given = parsed.GetValue(words)!;
            var swaps = swap.All(parsed).Select(text => text.Split('=')).Select(parts => new ModelSwap(parts[0], parts[1])).ToList();
            if (Compared(given, swaps, (options, parsed), desk) is not { } compared)
                return ExitCode.NotWorked;
            desk.Out.Write(options.Format(parsed) == "json" ? CompareJson.Write(compared) : CompareSheet.Write(compared, options.Units(parsed), desk.Pen));
            return Worked.ExitCodeOf(compared.Ledgers.After, strict: false);
        });
        return command;
    }

    private static ComparedDesigns? Compared(string[] given, List<ModelSwap> swaps, (StudyOptions Options, ParseResult Parsed) asked, Desk desk)
    {
        var read = JobSource.Read(given[0], asked.Options.Catalogues(asked.Parsed), desk, out var models, asked.Options.Rates(asked.Parsed));
        FindingsReport.Write(desk.Err, read.Findings);
        if (!read.Ok || models is null)
            return null;
        if (FirmRecord.Add(asked.Options.Request(asked.Parsed, desk.Today), asked.Options.Readings(asked.Parsed), desk) is not { } request)
            return null;
        var job = swaps.Count > 0 ? read.Value! with { Readings = [] } : read.Value!;
        string?[] designs = swaps.Count > 0 ? [given.ElementAtOrDefault(1)] : [given[1], given[2]];
        var complaints = designs.Select(design => DesignChoice.Complaint(job, request with { Design = design })).OfType<string>().Distinct().ToList();
        foreach (var complaint in complaints)
            desk.Err.WriteLine($"headroom: {complaint}");
        if (complaints.Count > 0)
            return null;
        var before = Study.DesignOf(job, designs[0])!;
        return swaps.Count > 0
            ? Swapped((job, before), swaps, (models, request), desk)
            : Of((job, before), (job, Study.DesignOf(job, designs[1])!), (models, request));
    }

    private static ComparedDesigns? Swapped((Job Job, Design Design) before, List<ModelSwap> swaps, (Catalogue Models, StudyRequest Request) with, Desk desk)
    {
        var swapped = ModelSwaps.Of(before.Job, before.Design, swaps, with.Models);
        foreach (var complaint in swapped.Complaints)
            desk.Err.WriteLine($"headroom: {complaint}");
        if (swapped.Job is not { } job)
            return null;
        // The other model may have fewer ports or no passive ones: what does not hold together is found as in any job.
        var errors = JobRules.Check(job, with.Models).Where(FindingsReport.IsError).ToList();
        FindingsReport.Write(desk.Err, errors);
        if (errors.Count > 0)
            return null;
        var compared = Of(before, (job, job.Designs[0]), with);
        return compared with { Designs = [.. compared.Designs, .. swapped.Survey], Swaps = swaps };
    }

    private static ComparedDesigns Of((Job Job, Design Design) before, (Job Job, Design Design) after, (Catalogue Models, StudyRequest Request) with) => new(
        LedgerDifference.Of(
            Study.Run(before.Job, with.Models, with.Request with { Design = before.Design.Id }),
            Study.Run(after.Job, with.Models, with.Request with { Design = after.Design.Id })),
        DesignDifferences.Of(before.Design, after.Design),
        []);

    private static string? ComplaintOf(string given) =>
        given.Split('=') is [{ Length: > 0 } from, { Length: > 0 } to]
            ? from == to ? $"puts {from} in its own place" : null
            : $"is a model, = and the model in its place: wren-b=redshank, not '{given}'";
}

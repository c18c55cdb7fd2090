using System.CommandLine;
using System.Globalization;
using Headroom.Documents.Drawings;
using Headroom.Documents.Papers;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom draw JOB --out DIR</c>: parse, read, study, plan where a drawing is of a plan, write the drawings.</summary>
internal static class DrawCommand
{
    private static readonly string[] Notes =
    [
        "All drawings are written aside and moved into the folder together; one that is there already is replaced.",
        "Those of the planner (front, turning) take their time, and are drawn only when --only names them.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "draw",
            "Draws racks, switches, rooms, outages, air and more of a job, as SVG",
            "JOB",
            "headroom draw examples/barn-vets/job.yaml --out drawings",
            "headroom draw job.yaml --out drawings --only rack,room") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var folder = new ValueOption("--out", "DIR", "the folder to write into; it is made when it is not there");
        var only = new ValueOption("--only", "DRAWING,...", $"only some of the {DrawingList.All.Count} kinds, which docs/drawings.md tells: rack, face, room ...");
        only.Checked(given => given.Split(',').Select(name => ValueOption.Complaint(name.Trim(), [.. DrawingList.All.Select(kind => kind.Id)])).FirstOrDefault(problem => problem is not null));
        var time = new ValueOption("--time", "SECONDS", "stop planning then with the best so far, which may differ from run to run");
        time.Checked(given => Seconds(given) is null ? $"is a number of seconds above 0, not '{given}'" : null);
        var options = new StudyOptions("text");
        command.Add(folder);
        command.Add(only);
        command.Add(time);
        options.AddTo(command, "--only", "--format");
        command.SetAction(parsed =>
        {
            if (folder.One(parsed) is not { } into)
            {
                desk.Err.WriteLine("headroom: draw needs --out DIR, the folder to write into");
                return ExitCode.NotWorked;
            }

            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked)
                return ExitCode.NotWorked;
            var kinds = only.One(parsed) is { } names ? names.Split(',').Select(name => DrawingList.Find(name.Trim())!).Distinct().ToList() : [.. DrawingList.All.Where(kind => kind.Needs is null)];
            var results = Study.Results(asked.Job, asked.Models, asked.Request);
            var input = new PaperInput(asked.Job, results, Study.LedgerOf(results, asked.Request)) { Request = asked.Request, Units = options.Units(parsed) };
            return PlannedInputs.Add(input, [.. kinds.Select(kind => kind.Needs).OfType<PlannedFor>()], (asked, time.One(parsed) is { } most ? Seconds(most) : null), desk) is { } whole ? Write(DrawingPack.Write(whole, kinds), only.One(parsed) is null, into, desk) : ExitCode.NotWorked;
        });
        return command;
    }

    private static double? Seconds(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is > 0 and < 100_000 ? value : null;

    private static int Write(WrittenPapers drawings, bool all, string folder, Desk desk)
    {
        if (drawings.Papers.Count > 0 && PaperFolder.Complaint(folder, drawings.Papers) is { } complaint)
        {
            desk.Err.WriteLine($"headroom: {complaint}");
            return ExitCode.NotWorked;
        }

        foreach (var drawing in drawings.Papers)
            desk.Out.WriteLine(Path.Combine(folder, drawing.Name));
        foreach (var missing in drawings.Missing)
            desk.Out.WriteLine($"not drawn: {missing.Id}, {missing.Why}");
        if (all)
            desk.Out.WriteLine($"not drawn: {string.Join(" and ", DrawingList.All.Where(kind => kind.Needs is not null).Select(kind => kind.Id))}, for the planner takes its time: name them with --only");
        return ExitCode.NothingShort;
    }
}

using System.CommandLine;
using System.Globalization;
using Headroom.Cli.Csv;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Engineering.Years;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom years JOB</c>: parse, read, study year by year, print.</summary>
internal static class YearsCommand
{
    private const int Usual = 5;

    private static readonly string[] Notes =
    [
        "Each year is a study of a changed copy of the job: devices added, batteries older, dust in fans, prices risen, as 'years' of the policy says. What it does not say is asked for.",
        "It ends with 0 when nothing becomes short until then, 1 when something is or becomes short, 2 when it could not be worked out.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "years",
            "Tells what becomes short over the years, when and why, and what is due",
            "JOB",
            "headroom years examples/barn-vets/job.yaml --until 7",
            "headroom years job.yaml --design mended --format csv") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var until = new ValueOption("--until", "YEARS", $"how many years: 1 to {YearsStudy.Most}; {Usual} without it").Checked(
            given => Count(given) is null ? $"is a number of years from 1 to {YearsStudy.Most}, not '{given}'" : null);
        var options = new StudyOptions("text", "json", "csv");
        command.Add(until);
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            var years = until.One(parsed) is { } given ? Count(given)!.Value : Usual;
            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked)
                return ExitCode.NotWorked;
            var result = YearsStudy.Of(asked.Job, asked.Models, asked.Request, years);
            desk.Out.Write(options.Format(parsed) switch
            {
                "json" => YearsJson.Write(result),
                "csv" => YearsCsv.Write(result),
                _ => YearsSheet.Write(result, options.Units(parsed), desk.Pen),
            });
            return result.ComesShort ? ExitCode.Short : ExitCode.NothingShort;
        });
        return command;
    }

    private static int? Count(string given) =>
        int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out var years) && years is >= 1 and <= YearsStudy.Most ? years : null;
}

using System.CommandLine;
using System.Globalization;
using Headroom.Cli.Csv;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Record;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom record FOLDER</c>: parse, read the firm's own sheets, study them, print.</summary>
internal static class RecordFolderCommand
{
    private static readonly string[] Notes =
    [
        $"FOLDER holds some or all of {Words.Or(FirmBookFiles.Names).Replace(" or ", " and ", StringComparison.Ordinal)} (docs/record.md). They are never changed, and nothing is kept.",
        "It ends with 0 when no shelf is short, 1 when one is, 2 when it could not be worked out.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "record",
            "Says what a firm's own record teaches: failures, spares, hours, money, readings",
            "FOLDER",
            "headroom record examples/firm-record",
            "headroom record our-record --format json") { Notes = Notes };
        var words = new WordArgument("a FOLDER", 1, 1).AddTo(command);
        var on = new ValueOption("--on", "DATE", "count hours up to another day than today: 2026-11-25").Checked(given => Day(given) is null ? $"is a day written as 2026-11-25, not '{given}'" : null);
        var hot = new ValueOption("--hot", "TEMPERATURE", "from which air on a place counts as hot; otherwise 35 °C").Checked(given => Celsius(given) is null ? $"is a temperature between 0 and 90 °C like '38 °C', not '{given}'" : null);
        var working = new FlagOption("--working", "opens every figure: formula, from which lines, source");
        var column = PairOption.Of("--column", "SHEET/HEADING=FIELD", "which field a column becomes: 'fleet.csv/Built=installed'").Checked(Complaint);
        var decimals = new ValueOption("--decimals", string.Join('|', SheetImport.Decimals), "the decimal sign; otherwise the numbers tell").OneOf([.. SheetImport.Decimals]);
        var days = new ValueOption("--days", "ORDER", Words.Or(SheetImport.Days)).OneOf([.. SheetImport.Days]);
        var format = new ValueOption("--format", "text|json|csv", "text for people, json or csv for programs").OneOf("text", "json", "csv");
        var catalogue = new ValueOption("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
        foreach (var option in new Option[] { on, hot, working, column, decimals, days, format, catalogue })
            command.Add(option);
        command.SetAction(parsed =>
        {
            var folder = Path.TrimEndingDirectorySeparator(parsed.GetValue(words)![0]);
            var models = JobSource.Models(catalogue.All(parsed));
            FindingsReport.Write(desk.Err, models.Findings);
            if (models is not { Ok: true, Value: { } known })
                return ExitCode.NotWorked;
            var terms = new RecordTerms(on.One(parsed) is { } day ? Day(day)!.Value : desk.Today, hot.One(parsed) is { } from ? Celsius(from)!.Value : RecordTerms.UsualHotCelsius);
            var plan = new RecordPlan(known, terms.On, terms.HotCelsius) { Columns = PairOption.All(column.All(parsed)), Decimals = decimals.One(parsed), Days = days.One(parsed) };
            var book = FirmBookFiles.Read(folder, plan);
            FindingsReport.Write(desk.Err, book.Findings);
            if (!book.Ok)
                return ExitCode.NotWorked;
            var result = RecordStudy.Of(book.Value!, terms, known);
            desk.Out.Write(Render(result, (format.One(parsed), folder, parsed.GetValue(working)), desk.Pen));
            return result.IsShort ? ExitCode.Short : ExitCode.NothingShort;
        });
        return command;
    }

    private static string Render(RecordResult result, (string? Format, string Folder, bool Opened) wanted, Pen pen) => wanted.Format switch
    {
        "json" => RecordJson.Write(result, wanted.Folder),
        "csv" => RecordCsv.Write(result),
        _ => new RecordText(wanted.Folder, wanted.Opened).Write(result, pen),
    };

    private static string? Complaint(string given) => FirmBookFiles.Names.Any(name => given.StartsWith(name + "/", StringComparison.OrdinalIgnoreCase))
        ? null : $"begins with the sheet it is in, like fleet.csv/Built=installed, not '{given}'";

    private static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    private static double? Celsius(string text) =>
        QuantityText.Measure(text, Domain.Quantities.Celsius.Units, out _) is { Value: >= 0 and <= 90 } found ? found.Value : null;
}

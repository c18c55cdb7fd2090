using System.CommandLine;
using System.Globalization;
using Headroom.Cli.Csv;
using Headroom.Cli.Json;
using Headroom.Cli.Many;
using Headroom.Cli.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;
using Headroom.Engineering.Remedies;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom remedies JOB</c>: parse, read, search, print; with <c>--take</c> write one as a design.</summary>
internal static class RemediesCommand
{
    private static readonly string[] Notes =
    [
        "Only what a study of the whole changed design calls a gain is listed. --take leaves everything else in the file, 'chosen' too, as it was.",
        "It ends as a study of the design would; with --take as one of the design written.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "remedies",
            "Tells what could help what is short or tight, each studied with the whole ledger, and writes one as a new design",
            "JOB",
            "headroom remedies examples/barn-vets/job.yaml",
            "headroom remedies job.yaml --take 1 --as mended") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var entry = new ValueOption("--entry", "ID", "help only this entry; may be repeated", often: true);
        var take = new ValueOption("--take", "N", "write the remedy of this number as a new design").Checked(ComplaintOf);
        var name = new ValueOption("--as", "NAME", "what that design is called");
        var all = new FlagOption("--all", "lists every remedy");
        var options = new StudyOptions("text", "json", "csv");
        foreach (var option in new Option[] { entry, take, name, all })
            command.Add(option);
        // Every discipline counts: what helps one may harm another.
        options.AddTo(command, "--only");
        command.Validators.Add(result =>
        {
            if (result.GetResult(name) is not null && result.GetResult(take) is null)
                result.AddError("--as names what --take writes; say which: --take N --as NAME");
        });
        command.SetAction(parsed =>
        {
            var given = parsed.GetValue(job)![0];
            if (Found(given, entry.All(parsed), (options, parsed), desk) is not var (read, models, result))
                return ExitCode.NotWorked;
            if (take.One(parsed) is { } number)
                return RemedyTaking.Take(given, (read, models), result, (int.Parse(number, CultureInfo.InvariantCulture), name.One(parsed)), desk);
            var request = new SheetRequest(given, options.Again(parsed), parsed.GetValue(all), options.Units(parsed));
            desk.Out.Write(options.Format(parsed) switch
            {
                "json" => RemediesJson.Write(result),
                "csv" => RemediesCsv.Write(result.Remedies),
                _ => RemedySheet.Write(result, request, desk.Pen),
            });
            return Worked.ExitCodeOf(result.Before, strict: false);
        });
        return command;
    }

    private static (Job Job, Catalogue Models, RemedyResult Result)? Found(string given, IReadOnlyList<string> words, (StudyOptions Options, ParseResult Parsed) asked, Desk desk)
    {
        if (Worked.Asked(given, asked.Options, asked.Parsed, desk) is not { } study || Entries(Study.Run(study.Job, study.Models, study.Request), words, desk) is not { } entries)
            return null;
        return (study.Job, study.Models, Search(study.Job, study.Models, new(study.Request, entries), desk));
    }

    private static RemedyResult Search(Job job, Catalogue models, RemedyRequest request, Desk desk)
    {
        Progress? progress = null;
        try
        {
            return RemedySearch.Find(job, models, request, count =>
            {
                progress = new Progress(desk.Err, count, desk.SomebodyLooksOn, "changes");
                return progress.Done;
            });
        }
        finally
        {
            progress?.Dispose();
        }
    }

    // Null when a word names no entry, which has then been said.
    private static List<string>? Entries(Ledger ledger, IReadOnlyList<string> words, Desk desk)
    {
        var ids = new List<string>();
        var complaints = new List<string>();
        foreach (var word in words)
        {
            var search = EntrySearch.Find(ledger, word, many: true);
            var before = ids.Count;
            ids.AddRange(search.Ids.Where(id => ledger.Entries.Any(entry => entry.Id == id)));
            if (ids.Count == before)
                complaints.Add(search.Complaint ?? $"headroom: '{word}' is a figure without a limit; nothing of it can be short");
        }

        foreach (var complaint in complaints)
            desk.Err.WriteLine(complaint);
        return complaints.Count == 0 ? ids : null;
    }

    private static string? ComplaintOf(string given) =>
        int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 ? null : $"is the number of a remedy, from 1, not '{given}'";
}

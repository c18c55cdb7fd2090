using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom explain JOB ENTRY...</c>: parse, read, study, find, print.</summary>
internal static class ExplainCommand
{
    private static readonly string[] Notes =
    [
        "ENTRY is the id of an entry or figure, a part of it that no other has (field-link/volts), or a thing, for all of it (loft-pipe). Exit codes are those of study, for the entries shown.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "explain",
            "Opens figures: how each was worked out, from what, and up to where it holds",
            "JOB ENTRY...",
            "headroom explain examples/barn-vets/job.yaml field-link/volts") { Notes = Notes };
        var words = new WordArgument("a JOB and at least one ENTRY", 2, int.MaxValue).AddTo(command);
        var options = new StudyOptions("text", "json");
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            var given = parsed.GetValue(words)!;
            if (Worked.Out(given[0], options, parsed, desk) is not { } ledger || Chosen(ledger, given[1..], desk.Err) is not { } chosen)
                return ExitCode.NotWorked;
            desk.Out.Write(options.Format(parsed) == "json" ? LedgerJson.Write(chosen, workings: true) : Explanation.Write(chosen, new ExplainRequest(JobSource.PathOf(given[0]), options.Units(parsed)), desk.Pen));
            return Worked.ExitCodeOf(chosen, strict: false);
        });
        return command;
    }

    // The ledger with what was asked for and nothing else, so that its counts are those of what is shown.
    private static Ledger? Chosen(Ledger ledger, string[] asked, TextWriter complaints)
    {
        var found = asked.Select(word => EntrySearch.Find(ledger, word, many: true)).ToList();
        foreach (var complaint in found.Select(search => search.Complaint).OfType<string>())
            complaints.WriteLine(complaint);
        if (found.Exists(search => search.Ids.Count == 0))
            return null;
        var ids = found.SelectMany(search => search.Ids).ToHashSet();
        return ledger with
        {
            Entries = [.. ledger.Entries.Where(entry => ids.Contains(entry.Id))],
            Figures = [.. ledger.Figures.Where(figure => ids.Contains(figure.Id))],
            Answers = [],
            LooseReadings = [],
            LooseOverrulings = [],
        };
    }
}

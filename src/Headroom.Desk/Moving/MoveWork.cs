using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Moving;

/// <summary>Moves things on a board: makes the job as it would be, studies it, and tells what it does to the ledger.</summary>
internal sealed class MoveWork(JobShelf shelf, JobSaving saving, IMoveBoard board, MoveBase on)
{
    /// <summary>The sheet with a draft on it.</summary>
    /// <param name="draft">What was moved.</param>
    public MoveSheet Show(Draft draft) => Try(draft, draft.Now).Sheet;

    /// <summary>Makes a move.</summary>
    /// <param name="draft">What was moved before.</param>
    /// <param name="typed">What the fields are to say, by name; those that are not there stay.</param>
    /// <returns>The sheet afterwards: of a move that is refused with the reason at its thing, and all else where it was. With it the text with all that was moved; null when it was refused.</returns>
    public (MoveSheet Sheet, string? Text) Try(Draft draft, IReadOnlyDictionary<string, string> typed)
    {
        var saved = board.Things(on);
        var before = saved.Select(thing => thing.With(draft.Now)).ToList();
        var things = before.Select(thing => thing.With(typed)).ToList();
        var made = board.Changes(on, (saved, things), draft);
        var edit = made.Slips.Count > 0 ? null : JobFieldEditor.Put(on.Open.Text.Text, [.. made.Changes.Select(change => change.Change)]);
        var read = edit?.Text is { } text ? shelf.Read(on.Open.Text.With(text)) : null;
        var errors = (read?.Findings ?? edit?.Findings ?? []).Where(finding => finding.Severity == Severity.Error).ToList();
        if (made.Slips.Count == 0 && errors.Count == 0 && read is { Ok: true, Value: { } job })
        {
            var studied = made.Changes.Count == 0 ? on.Studied : JobShelf.Study(job, on.Open.Models, on.Studied.Id, on.Studied.Request.On);
            return (Sheet(things, draft.Then(Different(saved, things)), studied, made.Changes), edit!.Text);
        }

        var moved = things.Zip(before).Where(pair => !pair.First.Fields.SequenceEqual(pair.Second.Fields)).Select(pair => pair.First.Key).ToList();
        var (atThings, loose) = Placed(errors, edit?.Text, made, moved is [var only] ? only : null);
        var marked = things.Zip(before).Select(pair => pair.First with
        {
            Slip = atThings.GetValueOrDefault(pair.First.Key),
            Fields = [.. pair.First.Fields.Zip(pair.Second.Fields).Select(fields => fields.First with { Good = fields.Second.Value })],
        });
        return (Refused([.. marked], loose, draft), null);
    }

    /// <summary>Saves what was moved as a revision.</summary>
    /// <param name="draft">What was moved.</param>
    /// <param name="text">The text with all of it.</param>
    /// <param name="by">Who.</param>
    /// <returns>The revision; else the sheet that says why it was not saved, on the revision it is now of.</returns>
    public (int? Number, MergedJob? Merged, MoveSheet? Sheet, MoveBase On) Save(Draft draft, string text, string by)
    {
        var outcome = saving.Save(on.Open, text, by);
        if (outcome.Number is { } number)
            return (number, outcome.Merged, null, on);
        if (outcome.Findings.Count > 0 || outcome.Merged is not { } clash || shelf.Open(on.Open.Stored.Id) is not { } last || shelf.Study(last, on.Studied.Id) is not { } studied)
            return (null, outcome.Merged, Show(draft) with { Loose = [.. outcome.Findings.Select(InWords)] }, on);
        // From here on it is a move of what they saved; whoever saves again has seen both.
        var theirs = new MoveBase(last, studied);
        return (null, clash, new MoveWork(shelf, saving, board, theirs).Show(draft with { Before = [] }) with { Clash = clash.Conflicts }, theirs);
    }

    private MoveSheet Sheet(IReadOnlyList<MoveThing> things, Draft draft, StudiedDesign studied, IReadOnlyList<(string Thing, FieldChange Change)> changes) => new(board.Path, board.Query, board.Pictures(studied, things), things, draft.NowText, draft.BeforeText)
    {
        Moved = [.. changes.Select(change => change.Change.InWords)],
        Measured = [.. changes.SelectMany(change => on.Studied.Job.Readings.Where(reading => change.Change.Path[^1] is "at" && reading.Where == change.Change.Path[^2]).Select(_ => change.Change.Path[^2])).Distinct()],
        Effects = ReferenceEquals(studied, on.Studied) ? [] : Effects.Of(on.Studied.Ledger, studied.Ledger),
        Lists = board.Lists(studied),
    };

    // The drawing and the ledger are those of before the move; the fields say what was typed, with what is wrong.
    private MoveSheet Refused(IReadOnlyList<MoveThing> typed, IReadOnlyList<string> loose, Draft draft)
    {
        var before = draft.Now.Count == 0 ? null : Try(draft, new Dictionary<string, string>()).Sheet;
        var sheet = before is null or { IsRefused: true } ? Sheet(board.Things(on), Draft.Empty, on.Studied, []) : before;
        return sheet with { Things = typed, Loose = loose };
    }

    private static Dictionary<string, string> Different(IReadOnlyList<MoveThing> saved, IReadOnlyList<MoveThing> things) => saved.Zip(things)
        .SelectMany(pair => pair.First.Fields.Zip(pair.Second.Fields)).Where(pair => pair.First.Value != pair.Second.Value.Trim()).ToDictionary(pair => pair.Second.Name, pair => pair.Second.Value.Trim());

    // A finding is of the thing in whose field it was found; else of the one that was moved; else of none.
    private static (Dictionary<string, MoveSlip> Things, List<string> Loose) Placed(List<Finding> errors, string? text, MoveChanges made, string? moved)
    {
        var things = made.Slips.ToDictionary(slip => slip.Key, slip => slip.Value);
        var loose = new List<string>();
        var outline = new JobOutline(text ?? "");
        foreach (var finding in errors)
        {
            var path = outline.PathAt(finding.At);
            var thing = made.Changes.FirstOrDefault(change => Leads(change.Change.Path, path)).Thing ?? moved;
            if (thing is null)
                loose.Add(InWords(finding));
            else
                things.TryAdd(thing, new(InWords(finding)));
        }

        return (things, loose);
    }

    private static bool Leads(IReadOnlyList<string> change, IReadOnlyList<string> path) =>
        path.Count >= change.Count - 1 && change.Take(Math.Min(change.Count, path.Count)).SequenceEqual(path.Take(change.Count));

    private static string InWords(Finding finding) => $"{finding.Given}; allowed: {finding.Allowed}; {finding.Advice}";
}

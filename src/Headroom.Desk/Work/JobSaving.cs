using System.Text;
using Headroom.Desk.Shown;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;
using Headroom.Store;

namespace Headroom.Desk.Work;

/// <summary>Saves changes of jobs: refuses what does not hold together, and brings together what two people changed.</summary>
internal sealed class JobSaving(JobStore store, JobShelf shelf)
{
    private const int MostTries = 8;

    /// <summary>Puts a new job in.</summary>
    /// <returns>Its id, or why it was refused.</returns>
    public (string? Id, IReadOnlyList<Finding> Findings) Add(JobText text, string by, string what)
    {
        var read = shelf.Read(text);
        if (!read.Ok)
            return (null, read.Findings);
        var job = store.Add(read.Value!.Name, text, new(by, what));
        Keep(job.Id);
        return (job.Id, []);
    }

    /// <summary>Saves a changed text.</summary>
    /// <param name="open">The revision that was changed.</param>
    /// <param name="text">The whole new text.</param>
    /// <param name="by">Who.</param>
    /// <param name="what">What it is, in words; null to tell it by the fields that changed.</param>
    public SaveOutcome Save(OpenJob open, string text, string by, string? what = null)
    {
        MergedJob? merged = null;
        var (on, mine) = (open.Number, text);
        for (var tries = 0; tries < MostTries; tries++)
        {
            var changed = open.Text.With(mine);
            var read = shelf.Read(changed);
            if (!read.Ok)
                return new(null, [.. read.Findings.Where(finding => finding.Severity == Severity.Error)], merged, mine);
            var words = what ?? ChangeWords.Of(JobChanges.Between(open.Text.Text, text));
            if (words.Length == 0)
                return new(open.Number, [], merged, mine);
            var saved = store.Save(open.Stored.Id, on, (read.Value!.Name, changed), new(by, words));
            if (saved.Ok)
            {
                Keep(open.Stored.Id);
                return new(saved.Head, [], merged, mine);
            }

            if (store.Read(open.Stored.Id, saved.Head) is not { } theirs)
                break;
            merged = JobMerge.Merge(open.Text.Text, text, theirs.Text);
            if (merged.Text is null)
                return new(null, [], merged, mine);
            (on, mine) = (saved.Head, merged.Text);
        }

        return new(null, [new(Severity.Error, "DESK", Place.None, "others save this job all the time", "one change after the other", "try again in a moment")], merged, mine);
    }

    /// <summary>Keeps what the last revision is worked with, as it is now; what is kept already stays.</summary>
    public KeptLedger? Keep(string id)
    {
        if (shelf.Open(id) is not { } open)
            return null;
        var studied = shelf.Study(open);
        var ledger = studied?.Ask(one => one.Shown.Kept) ?? KeptLedger.Without(open.Read?.Name ?? open.Stored.Name);
        List<KeptPart> parts = [new("models", Encoding.UTF8.GetBytes(open.Models.ModelText)), new(KeptLedger.Part, ledger.ToBytes())];
        if (open.Models.RateText.Length > 0)
            parts.Add(new("rates", Encoding.UTF8.GetBytes(open.Models.RateText)));
        store.Keep(id, open.Number, parts);
        return ledger;
    }

    /// <summary>The ledger kept with a revision; the one of the last revision is worked out when there is none.</summary>
    public KeptLedger? Kept(string id, int number, bool isLast) =>
        store.Kept(id, number, KeptLedger.Part) is { } part ? KeptLedger.Read(part.Bytes.Span) : isLast ? Keep(id) : null;
}

using System.Globalization;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering;
using Headroom.Engineering.Differences;
using Headroom.Engineering.Remedies;
using Headroom.JobFiles.Editing;

namespace Headroom.Desk.Tasks;

/// <summary>Looks for remedies.</summary>
internal sealed class RemedyWork(JobShelf shelf) : IDeskWork
{
    private const int Most = 40;
    public string Kind => "remedies";

    public byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at)
    {
        var studied = shelf.Study(open, asked.Design) ?? throw new InvalidOperationException("the job has no such design");
        var done = 0;
        var result = RemedySearch.Find(open.Sound!, open.Models.Models, new(studied.Request, asked.Words), count => () =>
        {
            at.Stop.ThrowIfCancellationRequested();
            at.Tell($"{Interlocked.Increment(ref done)} of {count} changes studied with the whole ledger");
        });
        List<string> said = [$"{result.Studied} changes were studied with the whole ledger: {result.NoGain} do not fit, help nothing or do more harm, {result.Dominated} do no more than another that is no dearer; {result.Remedies.Count} remain."];
        if (result.Asked.Count == 0)
            said = ["Nothing is short or tight, so there is nothing to mend."];
        if (result.NotTried > 0)
            said.Add($"{result.NotTried} more were not tried.");
        if (result.Helpless.Count > 0)
            said.Add($"Nothing was found for {string.Join(", ", result.Helpless.Select(entry => entry.Id))}.");
        var whole = Study.DesignOf(studied.Job, studied.Id);
        return new KeptFinds(said, [.. result.Remedies.Take(Most).Select(remedy => Kept(remedy, (studied.Id, whole)))]).ToBytes();
    }

    private static KeptRemedy Kept(Remedy remedy, (string Id, Design? Whole) design) => new(
        remedy.Kind,
        remedy.Text,
        Price(remedy.Cost),
        [.. remedy.Better.Select(Told), .. remedy.Gone.Select(entry => $"{entry.Id}: nothing asks for it any more")],
        [.. remedy.Worse.Select(Told), .. remedy.NewlyAmiss.Select(entry => $"{entry.Id}: new, {LedgerInWords.Word(entry.Verdict)}")],
        $"{remedy.After.Count(Verdict.Short)} short, {remedy.After.Count(Verdict.Tight)} tight, {remedy.After.Count(Verdict.Unknown)} unknown",
        [.. remedy.Cautions.Select(LedgerModel.Caution)],
        $"{design.Id}-mended",
        DesignText.CanWrite(remedy.Change, design.Whole) ? DesignText.Of(remedy.Change, design.Whole) : null);

    private static string Told(EntryChange change)
    {
        var unit = ShownUnits.Metric.Of(change.After.Unit);
        var left = Numbers.Together([unit.Difference(change.Before.Left), unit.Difference(change.After.Left)]);
        var figures = change.Before.Unit == change.After.Unit && change.Moved is not null ? $", left {Numbers.WithUnit(left[1], unit.Between)}, was {left[0]}" : "";
        return $"{change.After.Id}: {LedgerInWords.Word(change.After.Verdict)}, was {LedgerInWords.Word(change.Before.Verdict)}{figures}";
    }

    private static string Price(RemedyCost cost) => cost.Amount switch
    {
        0 => "costs nothing",
        < 0 and var less => $"saves {Amount(-less, cost.Currency)}",
        { } more => $"costs {Amount(more, cost.Currency)}",
        _ => "cost not known",
    };

    private static string Amount(decimal amount, string currency) => $"{amount.ToString("0.00", CultureInfo.InvariantCulture)} {currency}";
}

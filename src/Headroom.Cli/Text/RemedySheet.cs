using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Differences;
using Headroom.Engineering.Remedies;

namespace Headroom.Cli.Text;

/// <summary>Remedies as a sheet: each with what gets better, what gets worse, and what it takes.</summary>
internal static class RemedySheet
{
    private const int Most = 12;
    private const int MostEntries = 4;
    private const int Indent = 4;

    /// <summary>Writes it.</summary>
    public static string Write(RemedyResult result, SheetRequest request, Pen pen)
    {
        var page = new Page(pen);
        Sheet.WriteTitle(page, result.Before);
        page.Gap();
        page.Paragraph(Counted(result));
        if (result.Helpless.Count > 0)
            page.Paragraph($"Nothing was found for {Words.Or([.. result.Helpless.Select(entry => entry.Id)])}.");
        var shown = request.All ? result.Remedies : [.. result.Remedies.Take(Most)];
        for (var index = 0; index < shown.Count; index++)
            WriteRemedy(page, index + 1, shown[index], request.Units);
        if (shown.Count < result.Remedies.Count)
        {
            page.Gap();
            page.Line($"{result.Remedies.Count - shown.Count} more (--all lists them)");
        }

        WriteCautions(page, shown);
        WriteNext(page, result, request);
        return page.ToString();
    }

    private static string Counted(RemedyResult result)
    {
        var amiss = result.Asked.Count(entry => entry.Verdict != Verdict.Clear);
        if (amiss == 0)
            return result.Asked.Count == 0 ? "Nothing is short or tight, so there is nothing to mend." : $"{string.Join(", ", result.Asked.Select(entry => entry.Id))}: clear already, nothing to mend.";
        var counts = new[] { Verdict.Short, Verdict.Tight, Verdict.Unknown }.Select(verdict => (Verdict: verdict, Count: result.Asked.Count(entry => entry.Verdict == verdict)))
            .Where(one => one.Count > 0).Select(one => $"{one.Count} {Words.Of(one.Verdict)}");
        var left = result.NotTried == 0 ? "" : $" {result.NotTried} more were not tried.";
        return $"To be helped: {string.Join(", ", counts)}. {Words.Count(result.Studied, "change was", "changes were")} studied with the whole ledger: "
            + $"{result.NoGain} do not fit, help nothing or do more harm, {result.Dominated} do no more than another that is no dearer; {result.Remedies.Count} remain.{left}";
    }

    private static void WriteRemedy(Page page, int number, Remedy remedy, ShownUnits units)
    {
        page.Gap();
        page.Edges($"{number.ToString(CultureInfo.InvariantCulture),2}  {remedy.Kind}", Price(remedy));
        page.Paragraph(remedy.Text, Indent, Indent);
        foreach (var change in remedy.Better)
            WriteChange(page, change, units);
        foreach (var entry in remedy.Gone)
            page.Edges($"    {page.Pen.Mark(entry.Verdict)} {page.Pen.Plain("→")} {page.Pen.Mark(Verdict.Clear)}  {entry.Id}", "nothing asks for it any more");
        WriteWorse(page, remedy, units);
        page.Paragraph($"{Then(remedy)}{Work(remedy)}{Trust(remedy)}{Care(remedy)}", Indent, Indent);
    }

    private static void WriteWorse(Page page, Remedy remedy, ShownUnits units)
    {
        if (remedy.Worse.Count + remedy.NewlyAmiss.Count == 0)
            return;
        page.Line("    worse:");
        foreach (var change in remedy.Worse.Take(MostEntries))
            WriteChange(page, change, units);
        foreach (var entry in remedy.NewlyAmiss.Take(MostEntries))
            page.Edges($"      {page.Pen.Mark(entry.Verdict)}    {entry.Id}", "new");
        var more = remedy.Worse.Count + remedy.NewlyAmiss.Count - Math.Min(MostEntries, remedy.Worse.Count) - Math.Min(MostEntries, remedy.NewlyAmiss.Count);
        if (more > 0)
            page.Line($"    {more} more (--format json has all)");
    }

    private static void WriteChange(Page page, EntryChange change, ShownUnits units) =>
        page.Edges($"    {page.Pen.Mark(change.Before.Verdict)} {page.Pen.Plain("→")} {page.Pen.Mark(change.After.Verdict)}  {change.After.Id}", CompareSheet.Left(change, units));

    private static string Price(Remedy remedy) => remedy.Cost switch
    {
        { Amount: 0 } => "costs nothing",
        { Amount: < 0 and var less, Currency: var currency } => $"saves {Amount(-less, currency)}",
        { Amount: { } amount, Currency: var currency } => $"costs {Amount(amount, currency)}",
        _ => "cost not known",
    };

    private static string Amount(decimal amount, string currency) => $"{amount.ToString("0.00", CultureInfo.InvariantCulture)} {currency}";

    private static string Then(Remedy remedy)
    {
        var (shorts, tights) = (remedy.After.Count(Verdict.Short), remedy.After.Count(Verdict.Tight));
        var tight = tights == 0 ? "nothing tight" : $"{tights} tight";
        return $"Then {(shorts == 0 ? "nothing is short" : $"{shorts} short")}, {tight}. ";
    }

    private static string Work(Remedy remedy)
    {
        var cost = remedy.Cost;
        var split = cost is { Parts: { } parts, Labour: { } labour } && parts != 0 && labour != 0 ? $"Parts {Amount(parts, cost.Currency)}, labour {Amount(labour, cost.Currency)}. " : "";
        var missing = cost.NotKnown is { } open ? $"Not known: {open.TrimEnd('?')}. " : "";
        var minutes = remedy.Minutes.High == 0 ? "" : $"{remedy.Minutes.Low} to {remedy.Minutes.High} min of work. ";
        return missing + split + minutes;
    }

    private static string Trust(Remedy remedy) => remedy.Certainty switch
    {
        Certainty.Sure => "Sure.",
        Certainty.Fair => $"Fairly sure: {remedy.CertaintyWhy}.",
        _ => $"Rough: {remedy.CertaintyWhy}.",
    };

    private static string Care(Remedy remedy) => remedy.Cautions.Count == 0 ? "" : $" Take care: {string.Join(", ", remedy.Cautions.Select(caution => caution.Code))}.";

    private static void WriteCautions(Page page, IReadOnlyList<Remedy> shown)
    {
        var cautions = shown.SelectMany(remedy => remedy.Cautions).DistinctBy(caution => caution.Code).ToList();
        if (cautions.Count == 0)
            return;
        page.Gap();
        page.Line("Take care");
        foreach (var caution in cautions)
            SheetNotes.WriteCaution(page, caution, 2);
    }

    private static void WriteNext(Page page, RemedyResult result, SheetRequest request)
    {
        if (result.Remedies.Count == 0)
            return;
        page.Gap();
        page.Paragraph("Costs are the firm's, as if nothing were built yet: what the offer would come to more, and work that none of its tasks covers.");
        page.Line($"Take one: headroom remedies {Words.Quoted(request.Job)} --take 1{(request.Again.Length == 0 ? "" : " " + request.Again)}");
    }
}

using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>The quotation: up to three designs side by side, what each does and does not, what it costs the client, what it rests on, and a place to sign.</summary>
internal static class Quotation
{
    private const int MostDesigns = 3;
    private const int MostTold = 3;
    private const int MostAssumed = 14;

    /// <summary>What stands on it; null when the job says nothing of money.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Results.Money is null)
            return null;
        var designs = input.SideBySide(MostDesigns);
        return
        [
            new Facts([("number", FirmOnPapers.QuoteNumber(input)), ("date", input.Day), ("for", input.Job.Client?.Name ?? ""), ("valid until", FirmOnPapers.ValidUntil(input)), ("site", input.Job.Name), ("your reference", "")]),
            new Words(Scope(input)),
            .. designs.Count > 1 ? Beside(designs) : Alone(designs[0]),
            .. designs.SelectMany(design => QuotationLines.Of(design, designs.Count > 1)),
            .. RestsOn(designs),
            .. Excluded(input),
            .. Terms(input),
            new Heading("Order"),
            new Words(designs.Count > 1 ? "We order this design, with these options, at the total above:" : "We order what stands above, with these options, at the total above:"),
            new Facts([("design", designs.Count > 1 ? "" : input.Ledger.Design), ("options", ""), ("name", ""), ("signed", ""), ("place, date", ""), ("order number", "")]),
        ];
    }

    private static string Scope(PaperInput input)
    {
        var bound = input.Results.Bound;
        var kinds = bound.Endpoints.Where(endpoint => endpoint.Model.Kind != "other").GroupBy(endpoint => endpoint.Model.Kind).Select(group => Written.Count(group.Count(), group.Key)).ToList();
        var laid = bound.Runs.Count(run => !run.Drop.Existing);
        var kept = bound.Runs.Count - laid;
        var cables = laid > 0 ? $" {Written.Count(laid, "cable")} {(laid == 1 ? "is" : "are")} laid, labelled and measured{(kept > 0 ? $", {Numbers.Show(kept)} that lie there already are kept" : "")}." : "";
        return $"Offered is a network that connects {Written.List(kinds)}.{cables} It is set up, tested with everything connected, and handed over with its papers.";
    }

    private static IEnumerable<Block> Alone(PaperInput design)
    {
        yield return new Heading("What it does");
        yield return new Words($"{Can(design)} {Cannot(design)}");
    }

    private static IEnumerable<Block> Beside(IReadOnlyList<PaperInput> designs)
    {
        yield return new Heading("The designs side by side");
        var strong = Lettering.Cell with { Face = Face.Strong };
        Row Line(string what, Func<PaperInput, string> told) => new([new(what, Lettering.Label), .. designs.Select(design => new Cell(told(design)))]);
        yield return new Table(
            [new("") { Least = 76 }, .. designs.Select(design => new Column(design.Ledger.Design) { Least = 120, Grows = true })],
            [
                Line("it can", Can),
                Line("it cannot", Cannot),
                Line("not known yet", Unknown),
                Line("ports with power left", design => Left(design, "powered-ports", "port")),
                Line("watts left", design => Left(design, "watts", "W")),
                Line("on battery", Battery),
                Line("without tax", design => QuotationLines.Sum(design, quote => quote.Net)),
                Line("tax", design => QuotationLines.Sum(design, quote => quote.Tax)),
                new Row([new("to pay", strong), .. designs.Select(design => new Cell(QuotationLines.Sum(design, quote => quote.Gross), strong))]) { IsSum = true },
            ]);
    }

    private static string Can(PaperInput design)
    {
        var entries = design.Entries(inside: false);
        var clear = entries.Count(entry => entry.Verdict == Verdict.Clear);
        var tight = entries.Count(entry => entry.Verdict == Verdict.Tight);
        return $"It keeps {Numbers.Show(clear + tight)} of {Numbers.Show(entries.Count)} limits that were worked out{(tight > 0 ? $", {Numbers.Show(tight)} of them with less to spare than is wanted" : "")}.";
    }

    private static string Cannot(PaperInput design)
    {
        var told = design.Entries(inside: false).Where(entry => entry.Verdict == Verdict.Short).ToList();
        if (told.Count == 0)
            return "Nothing that is known falls short.";
        var sentences = told.Take(MostTold).Select(entry => LedgerInWords.Sentence(entry.Story.Say(entry))).Distinct();
        return string.Join(" ", sentences) + (told.Count > MostTold ? $" And {Numbers.Show(told.Count - MostTold)} more." : "");
    }

    private static string Unknown(PaperInput design)
    {
        var questions = design.Entries(inside: false).Where(entry => entry is { Verdict: Verdict.Unknown, Question: not null }).Select(entry => Written.Bare(entry.Question!)).Distinct().ToList();
        return questions.Count == 0 ? "nothing" : string.Join(" ", questions.Take(MostTold).Select(LedgerInWords.Sentence)) + (questions.Count > MostTold ? $" And {Numbers.Show(questions.Count - MostTold)} more." : "");
    }

    private static string Left(PaperInput design, string quantity, string unit)
    {
        var entries = design.Entries(inside: false).Where(entry => entry.Discipline == "power" && entry.Quantity == quantity && design.Results.Bound.Switches.Any(its => its.Id == entry.Subject)).ToList();
        return entries.Count == 0 ? "none given" : string.Join("\n", entries.Take(8).Select(entry => $"{entry.Subject}: {Told(entry, unit)}")) + (entries.Count > 8 ? $"\nand {entries.Count - 8} more" : "");
    }

    private static string Told(LedgerEntry entry, string unit) => entry.Left is not { } left ? "not known"
        : (entry.Parts is null ? "" : "at most ") + (unit == "W" ? Numbers.Show(Math.Abs(left), "W") + (left < 0 ? " too few" : "") : left < 0 ? $"{Written.Count((int)-left, unit)} too few" : Written.Count((int)left, unit));

    private static string Battery(PaperInput design) => design.Results.Standby.Supplies is { Count: > 0 } supplies
        ? string.Join("\n", supplies.Select(supply => $"{supply.Placed.Id}: {(supply.Governing?.Seconds is { } seconds ? Numbers.Show(Math.Floor(seconds / 60), "min") + ", batteries aged" : "not known")}"))
        : "none";

    private static IEnumerable<Block> RestsOn(IReadOnlyList<PaperInput> designs)
    {
        var assumed = designs.SelectMany(design => design.Entries(inside: false)).SelectMany(entry => entry.Assumed).Distinct().ToList();
        yield return new Heading("What it rests on");
        if (assumed.Count > 0)
            yield return new Table([new("taken for granted, because nobody has said or measured otherwise") { Grows = true }], [.. assumed.Take(MostAssumed).Select(text => Row.Of(LedgerInWords.Sentence(text)))]);
        if (assumed.Count > MostAssumed)
            yield return new Words($"{Numbers.Show(assumed.Count - MostAssumed)} more stand in the calculation book.", Lettering.Label);
        var cautions = designs.SelectMany(design => design.Entries(inside: false)).SelectMany(entry => entry.Cautions).DistinctBy(caution => caution.Code).OrderBy(caution => caution.Code, StringComparer.Ordinal).ToList();
        if (cautions.Count > 0)
            yield return new Table([new("to be heeded") { Grows = true }, new("who may do it") { Least = 120 }], [.. cautions.Select(caution => Row.Of(caution.Text, caution.Who))]);
    }

    private static IEnumerable<Block> Excluded(PaperInput input)
    {
        var own = input.Results.Bound.Endpoints.Where(endpoint => endpoint.Model.Kind == "other" || input.Job.Money!.LeaveOut.Contains(endpoint.Model.Id) || input.Job.Money.LeaveOut.Contains(endpoint.Id))
            .GroupBy(endpoint => endpoint.Model.Id).Select(group => group.First().Model.Kind is var kind && kind == "other" ? Written.Count(group.Count(), group.Key) : $"{Written.Count(group.Count(), kind)} ({group.Key})").ToList();
        yield return new Heading("Not in it");
        yield return new Words($"{(own.Count > 0 ? $"What is there or comes from others: {Written.List(own)}. " : "")}Mains wiring, outlets and earthing; building work, painting and fire stops that the building lacks today; contracts for lines; what hidden cables, walls or pipes turn out to need. Whatever is ordered on the way is agreed in writing, with its price, before it is done.");
    }

    private static IEnumerable<Block> Terms(PaperInput input)
    {
        yield return new Heading("Terms");
        yield return new Facts([("to be paid", input.Firm?.Payment ?? ""), ("work begins", ""), ("warranty", input.Job.Policy.Years?.Warranty?.Written ?? ""), ("done by", "")]);
        foreach (var block in FirmOnPapers.Terms(input))
            yield return block;
        yield return new Words($"{input.Results.Money!.Offer.Terms.RoundingInWords} Prices in {input.Results.Money.Currency}{(input.Job.Policy.PricesAsOf is { } asOf ? $", as of {Written.Day(asOf)}" : "")}.", Lettering.Label);
    }
}

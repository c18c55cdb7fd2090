using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering;
using Headroom.Engineering.Money;
using Headroom.Engineering.Reliability;

namespace Headroom.Documents.Papers;

/// <summary>The page of a month for the firm's own eyes: models in the field, what is due, what was worked out against what was read, and what the job brings.</summary>
internal static class MonthlyReview
{
    /// <summary>How far ahead it looks [d].</summary>
    public const int DaysAhead = 90;

    private const int MostDue = 8;
    private const int MostRead = 4;

    /// <summary>What stands on it.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input) =>
    [
        new Facts([("month", input.Ledger.On.ToString("MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture)), ("looked over by", ""), ("site", input.Job.Name), ("design", input.Ledger.Design)]),
        .. Models(input),
        .. Due(input),
        .. Readings(input),
        .. Job(input),
        new Heading("What follows from it"),
        new Table([new("drop a model, raise a reserve, change a price, stock a spare, go there before it fails") { Grows = true }, new("by") { Least = 60 }, new("until") { Least = 60 }], [.. Written.Blank(2)]),
    ];

    private static IEnumerable<Block> Models(PaperInput input)
    {
        yield return new Heading("Models in the field");
        if (input.Job.Fleet.Count == 0)
        {
            yield return new Words("Nobody has written how many of each model the firm has in the field, for how long, and how many failed.", Lettering.Body with { Face = Face.Slanted });
            yield break;
        }

        yield return new Table(
            [new("model") { Grows = true }, new("in the field", Anchor.End), new("together in service", Anchor.End), new("failed", Anchor.End), new("of them in hot places", Anchor.End), new("on the shelf", Anchor.End), new("supplier takes", Anchor.End)],
            [.. input.Job.Fleet.Select(Model)]);
        var entries = input.Entries(inside: true).Where(entry => entry.Discipline == ReliabilityLedger.Discipline).ToList();
        if (entries.Count > 0)
            yield return EntryTable.Of(entries, input.Units);
    }

    internal static Row Model(FleetRow row) => Row.Of(
        row.Model, Or(row.Units), row.Service?.Written ?? "?", Or(row.Failed), row.HotService is null ? "not told apart" : $"{Or(row.HotFailed)} in {row.HotService.Written}", Or(row.Spares), row.Supplier?.Written ?? "?");

    private static IEnumerable<Block> Due(PaperInput input)
    {
        var until = input.Ledger.On.AddDays(DaysAhead);
        var due = Study.Due(input.Job, input.Results.Bound.Catalogue, input.Request, 1).Where(one => one.On is { } day && day <= until).ToList();
        yield return new Heading($"Due within {DaysAhead} days");
        if (due.Count == 0)
            yield return new Words("Nothing of which the day is known.");
        else
            yield return new Table([Written.TickColumn, new("day"), new("what"), new("where") { Grows = true }, new("who") { Least = 60 }], [.. due.Take(MostDue).Select(one => Written.ToTick(Written.Day(one.On!.Value), one.What, one.Subject))]);
        if (due.Count > MostDue)
            yield return new Words($"And {due.Count - MostDue} more, which the maintenance schedule has.", Lettering.Label);
    }

    private static IEnumerable<Block> Readings(PaperInput input)
    {
        var read = input.Entries(inside: true).SelectMany(entry => entry.Measured.Select(comparison => (Entry: entry, Comparison: comparison))).DistinctBy(one => one.Comparison.Reading).ToList();
        yield return new Heading("Worked out and read");
        if (read.Count == 0)
        {
            yield return new Words("Nothing was read at this site yet: what do the ports give, how warm is it, what is heard?", Lettering.Body with { Face = Face.Slanted });
            yield break;
        }

        // What lies outside its joint interval is worth a row; the rest is counted.
        var apart = read.Where(one => !Agrees(one.Comparison)).ToList();
        if (apart.Count > 0)
            yield return new Table(
                [new("where"), new("what"), new("its bar") { Least = 84 }, new("worked out", Anchor.End), new("read", Anchor.End), new("apart", Anchor.End), new("unit"), new("what it means") { Grows = true }],
                [.. apart.Take(MostRead).Select(one => Read(input, one.Entry, one.Comparison))]);
        yield return new Words($"{Numbers.Show(read.Count - apart.Count)} of {Written.Count(read.Count, "reading")} agree with what was worked out.{(apart.Count > MostRead ? $" {Numbers.Show(apart.Count - MostRead)} more do not; the calculation book has them." : "")}", Lettering.Label);
    }

    internal static bool Agrees(Comparison comparison) => comparison is { Difference: { } difference, Joint: { } joint } && Math.Abs(difference) <= joint;

    private static Row Read(PaperInput input, LedgerEntry entry, Comparison comparison)
    {
        var unit = input.Units.Of(comparison.Reading.Unit);
        var figures = Numbers.Together([unit.Value(comparison.Predicted), unit.Value(comparison.Reading.Value), unit.Difference(comparison.Difference)]);
        string Or(string figure) => figure.Length > 0 ? figure : "?";
        return new Row([new(comparison.Reading.Where), new(entry.What), new("") { Draw = (canvas, box) => Drawings.EntryBar.Draw(canvas, entry, box) }, new(Or(figures[0])), new(Or(figures[1])), new(Or(figures[2])), new(unit.Symbol), new(LedgerInWords.Sentence(comparison.Finding))]) { Least = 15 };
    }

    private static IEnumerable<Block> Job(PaperInput input)
    {
        yield return new Heading("The job");
        if (input.Results.Money is not { } money)
        {
            yield return new Words("The job says nothing of money.");
            yield break;
        }

        var least = money.NotKnown.Count > 0 ? "at least " : "";
        var after = AfterwardsSum.Of(money);
        string Came(decimal? amount) => amount is { } known ? QuotationLines.Amount(known, money.Offer.Terms) : "";
        yield return new Table(
            [new("what") { Grows = true }, new($"offered [{money.Currency}]", Anchor.End), new("in the end") { Least = 90 }],
            [
                Written.ToFill("price without tax", least + QuotationLines.Amount(money.Offer.Net, money.Offer.Terms), Came(after?.Revenue)),
                Written.ToFill("cost, with what is put aside for coming back", least + QuotationLines.Amount(money.Cost, money.Offer.Terms), Came(after?.Cost)),
                Written.ToFill("margin", money.Margin is { } margin ? $"{(money.NotKnown.Count > 0 ? "by what is known " : "")}{Numbers.Show(Math.Round(100 * (double)margin, 1), "%")}" : "?", after?.Margin is { } made ? Numbers.Show(Math.Round(100 * (double)made, 1), "%") : ""),
                Written.ToFill("hours", money.Labour is { } labour ? $"{Numbers.Show(Math.Round((double)labour.Hours, 1))} ± {Numbers.Show(Math.Round(labour.DeviationHours, 1))} h" : "none", after?.Hours is { } hours ? Numbers.Show(Math.Round((double)hours, 1), "h") : ""),
                Written.ToFill("visits, variations", "", money.Terms.Afterwards is { } told ? Written.List([.. new[] { told.Visits is { } visits ? Written.Count(visits, "visit") : "", Written.Count(told.Variations.Count, "variation") }.Where(part => part.Length > 0)]) : ""),
                Written.ToFill("call-backs", ""),
            ]);
        if (after?.Question is { } question)
            yield return new Words(Written.Asked(question), Lettering.Body with { Face = Face.Slanted });
    }

    private static string Or(int? count) => count is { } known ? Numbers.Show(known) : "?";
}

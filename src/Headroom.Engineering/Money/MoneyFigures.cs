using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Money;

/// <summary>Figures of an offer that have no limit.</summary>
internal static class MoneyFigures
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(MoneyResult result)
    {
        var open = result.NotKnown.FirstOrDefault(line => line.Net is null)?.Question;
        var least = open is null ? "" : "at least, ";
        yield return Price(result, "net", $"{least}price without tax", (result.Offer.Net, open));
        yield return Price(result, "tax", $"{least}tax", (result.Offer.Tax, open));
        yield return Price(result, "gross", $"{least}price with tax", (result.Offer.Gross, open));
        foreach (var (name, quote) in result.Options)
            yield return new Figure($"money/{name}/gross", name, "option, with tax", (double)quote.Gross, result.Currency, null, () => Option(result, quote));
        var cost = result.NotKnown.FirstOrDefault(line => line.Cost is null)?.Question;
        yield return new Figure("money/offer/cost", MoneyLedger.Offer, $"{(cost is null ? "" : "at least, ")}cost", (double)result.Cost, result.Currency, cost, () => Costs(result)) { Inside = true };
        if (result.Labour is { Tasks.Count: > 0 } labour)
            yield return Hours(labour);
        if (result.Terms.Owning is not null)
        {
            foreach (var figure in Owned(result))
                yield return figure;
        }
    }

    private static Figure Price(MoneyResult result, string quantity, string what, (decimal Amount, string? Question) price) => new(
        $"money/offer/{quantity}", MoneyLedger.Offer, what, (double)price.Amount, result.Currency, price.Question,
        () => new Working("Σ lines − discount + tax", [.. MoneyWorking.Prices(result)], MoneyWorking.Totals(result), result.Offer.Terms.RoundingInWords));

    private static Working Option(MoneyResult result, Quote quote) => new(
        "Σ lines of the option − discount + tax",
        [.. quote.Lines.Select(line => new WorkingInput(MoneyWorking.Told(line), (double?)line.Net, result.Currency, "price of the line"))],
        [new("without tax", "the sum", (double)quote.Net, result.Currency), new("with tax", "", (double)quote.Gross, result.Currency)],
        quote.Terms.RoundingInWords);

    private static Working Costs(MoneyResult result) => new("Σ costs", [.. MoneyWorking.Costs(result)], [new("cost", "the sum", (double)result.Cost, result.Currency)], "arithmetic");

    private static Figure Hours(LabourSum labour)
    {
        var missing = labour.NotKnown.ToList();
        return new Figure(
            "money/labour/hours", "labour", missing.Count == 0 ? $"hours, ± {Words.Of(labour.DeviationHours)}" : "at least, hours", (double)labour.Hours, "h",
            missing.Count == 0 ? null : $"how long does one of these take: {Words.List(missing)}?",
            () => new Working(
                "Σ n · (low + 4 · likely + high) / 6, times the factor of the site",
                [.. labour.Tasks.Select(task => new WorkingInput($"{task.Count} x {task.Task}", (double?)task.Minutes, "min", "the mean of one"))],
                [
                    new("factor of the site", labour.Difficulty is null ? "a site like most" : $"mean of {labour.Difficulty.Written}", (double)labour.Factor, ""),
                    new("hours", "the sum times the factor", (double)labour.Hours, "h"),
                    new("standard deviation", "tasks by themselves, the factor common to all", labour.DeviationHours, "h"),
                ],
                "three-point estimate, a beta distribution")) { Inside = true };
    }

    private static List<Figure> Owned(MoneyResult result)
    {
        var (study, years) = (new OwningStudy(result), result.Terms.Owning!.Years);
        var owning = study.Find();
        Working Work() => new(
            "price with tax + energy of each year + changes of batteries, in money of today",
            [
                new("price with tax", (double)result.Offer.Gross, result.Currency, "the offer"),
                new("energy of a year", (double?)study.EnergyAYear, result.Currency, $"{Words.Of(result.Needs.MainsWatts ?? 0)} W all the time, from the study of power"),
                .. study.Changes.Select(change => new WorkingInput($"batteries of {change.Unit}, in year {change.Year}", (double)change.Amount, result.Currency, "blocks of the catalogue and the visit")),
                new("interest", 100 * (double)(owning?.Interest ?? 0), "%", result.Terms.Owning.Interest is null ? "not written: none" : "as written"),
            ],
            [
                new("of one each year", "(1 − (1 + i)^−n) / i", (double)OverYears.Each(owning?.Interest ?? 0, years), ""),
                new("all of it today", "the sum", (double?)owning?.WorthNow, result.Currency),
                new("the same each year", "divided by the factor", (double?)owning?.EqualYearly, result.Currency),
            ],
            "NIST Handbook 135, from memory; payments at the end of each year; no repairs, no end of life");
        return
        [
            new("money/owning/today", "owning", $"{years} years, in money of today", (double?)owning?.WorthNow, result.Currency, study.Question, Work),
            new("money/owning/yearly", "owning", "the same, each year", (double?)owning?.EqualYearly, result.Currency, study.Question, Work),
            new("money/owning/energy", "owning", "energy of a year", (double?)study.EnergyAYear, result.Currency, study.EnergyAYear is null ? study.Question : null, Work),
        ];
    }
}

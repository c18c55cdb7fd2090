using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Money;

/// <summary>Makes an offer of a design.</summary>
public static class MoneyStudy
{
    private const string UsualCurrency = "EUR";

    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="needs">What the studies before it found.</param>
    /// <returns>The result; null when the job says nothing of money.</returns>
    public static MoneyResult? Of(BoundDesign bound, MoneyNeeds needs)
    {
        if (bound.Job.Money is not { } money)
            return null;
        var currency = bound.Job.Client?.Currency ?? Written(money) ?? UsualCurrency;
        var terms = new QuoteTerms(
            [.. money.Taxes.Select(tax => (tax.Name, (decimal)tax.Rate.Value.Value))], (decimal)(money.Discount?.Value.Value ?? 0), money.TaxByLine, money.Ties, MinorUnits.Of(currency));
        var pricing = new Pricing(currency, (decimal?)money.Margin?.Value.Value, terms);
        var lines = new GoodsLines(bound, needs, pricing).Find();
        var labour = money.Labour is null ? null : LabourOf(bound, money.Labour);
        if (labour is not null && labour.Tasks.Count > 0)
            lines.Add(LabourLine(labour, money.Labour!, pricing));
        foreach (var line in money.Lines)
            lines.Add(Extra(line, pricing));
        return new MoneyResult(bound, money, currency, lines, Quote.Of(lines.Where(line => line.Option is null), terms), labour, needs);
    }

    /// <summary>The hours of a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="labour">How long things take.</param>
    /// <returns>The hours, task by task.</returns>
    private static LabourSum LabourOf(BoundDesign bound, LabourTerms labour)
    {
        var tasks = new List<TaskSum>();
        foreach (var name in LabourTerms.Names)
        {
            var count = CountOf(name, bound);
            if (count == 0 || (name is "job" or "panel" && !labour.Tasks.ContainsKey(name)))
                continue;
            var guess = labour.Tasks.GetValueOrDefault(name);
            tasks.Add(new TaskSum(name, count, guess is null ? null : Guess.Mean(guess), guess is null ? null : Guess.Deviation(guess)));
        }

        return new LabourSum(tasks, labour.Difficulty);
    }

    private static int CountOf(string task, BoundDesign bound) => task switch
    {
        "job" => 1,
        "drop" => GoodsLines.Laid(bound),
        "panel" => bound.Design.Fittings.Count(fitting => fitting.Kind == "panel"),
        "switch" => bound.Switches.Count,
        "injector" => bound.Injectors.Count,
        "standby supply" => bound.Design.Standby.Count,
        "other" => 0,
        _ => bound.Endpoints.Count(endpoint => endpoint.Model.Kind == task && !GoodsLines.LeftOut(bound, endpoint.Model.Id, endpoint.Id)),
    };

    private static PricedLine LabourLine(LabourSum labour, LabourTerms terms, Pricing pricing)
    {
        // Hours are offered to the hundredth; the line is priced with the hours that are shown.
        var hours = Math.Round(labour.Hours, 2, MidpointRounding.AwayFromZero);
        var missing = labour.NotKnown.ToList();
        var cost = missing.Count == 0 ? hours * pricing.Of(terms.HourCost) : null;
        var price = missing.Count > 0 ? null : pricing.Of(terms.HourPrice) is { } hour ? pricing.Round(hours * hour) : pricing.Net(cost);
        return new PricedLine("labour", hours, "h", cost, price, terms.Tax, null)
        {
            IsLabour = true,
            Question = missing.Count > 0 ? $"how long does one of these take: {Words.List(missing)}? write 'tasks'"
                : cost is null ? "what does an hour cost? write 'hour cost'" : price is null ? "which margin is wanted? write 'margin'" : null,
            Origin = terms.HourCost is null ? "not written" : Origins.Of(terms.HourCost),
        };
    }

    private static PricedLine Extra(ExtraLine line, Pricing pricing)
    {
        var cost = line.Count * pricing.Of(line.Cost);
        var price = line.Price is null ? pricing.Net(cost) : pricing.Of(line.Price) is { } each ? pricing.Round(line.Count * each) : null;
        return new PricedLine(line.What, line.Count, "", cost, price, line.Tax, line.Option)
        {
            Question = cost is null ? $"what does '{line.What}' cost the firm?" : price is null ? "which margin is wanted? write 'margin'" : null,
            Origin = line.At.ToString(),
        };
    }

    private static string? Written(MoneyTerms money) =>
        (money.Budget ?? money.Labour?.HourCost ?? money.Labour?.HourPrice ?? money.Lines.Select(line => line.Cost ?? line.Price).FirstOrDefault(price => price is not null))?.Value.Currency;
}

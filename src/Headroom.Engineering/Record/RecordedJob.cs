using Headroom.Domain.Ledgers;
using Headroom.Domain.Records;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Record;

/// <summary>What one job made in the end.</summary>
/// <param name="Row">What was written down of it.</param>
public sealed record RecordedJob(JobHours Row)
{
    /// <summary>Hours worked in all, those of coming back among them; null when not known.</summary>
    public decimal? Hours => Row.Worked + BackHours;

    /// <summary>Worked over estimated; null when one is not known, or nothing was estimated.</summary>
    public decimal? Overrun => Row.Estimated is > 0 and { } estimated ? Row.Worked / estimated : null;

    /// <summary>Times somebody went there; null when not known.</summary>
    public int? Journeys => Row.Visits + Row.CallBacks;

    /// <summary>The sum; what is not known stays so.</summary>
    public AfterwardsSum Sum => AfterwardsSum.Of(Parts, NotKnown.Count == 0 ? null : $"not known: {Words.List(NotKnown)}");

    /// <summary>What remained of the price, as a share of it; null when something is not known.</summary>
    public decimal? Margin => Sum.Margin;

    /// <summary>What can have remained at most, as a share of the price: what is not known cost nothing. Null when the price is not known.</summary>
    public decimal? MarginAtMost => Sum.Revenue is { } revenue ? Margins.Of(KnownCost, revenue) : null;

    /// <summary>What the job cost, as far as it is known.</summary>
    public decimal KnownCost => Costs.Sum(cost => cost.Amount ?? 0);

    /// <summary>What would have to be known, in words.</summary>
    public IReadOnlyList<string> NotKnown =>
    [
        .. new (bool Lacks, string Name)[]
        {
            (Row.Worked is null, "hours worked"), (Row.HourCost is null, "what an hour costs"), (Row.Price is null, "the price"), (Row.Material is null, "what the goods cost"),
            (Row.VariationPrice is null, "what variations brought"), (Row.VariationCost is null, "what variations cost"), (Row.Visits is null, "visits"), (Row.CallBacks is null, "call-backs"),
            (BackHours is null, "hours of coming back"), (Row.Visit is null && Journeys is not 0, "what a visit costs"),
        }.Where(part => part.Lacks).Select(part => part.Name),
    ];

    private decimal? BackHours => Row.CallBackHours ?? (Row.CallBacks == 0 ? 0 : null);

    private decimal? Going => Journeys == 0 ? 0 : Journeys * Row.Visit;

    private AfterwardsParts Parts => new(Hours, Row.HourCost, Row.Material, Going) { Offered = Row.Price, VariationPrice = Row.VariationPrice, VariationCost = Row.VariationCost };

    private (string Name, string How, decimal? Amount)[] Costs =>
    [
        ("work", "hours worked · hour", Row.Worked * Row.HourCost),
        ("coming back", "hours of coming back · hour", BackHours * Row.HourCost),
        ("goods", "in the end", Row.Material),
        ("going there", "(visits + call-backs) · visit", Going),
        ("variations", "besides hours", Row.VariationCost),
    ];

    /// <summary>How it was worked out.</summary>
    /// <returns>The working.</returns>
    public Working Work()
    {
        var (currency, at) = (Row.Currency ?? "", Row.At.ToString());
        // Figures are shown with four digits; an amount of money is told to its last one.
        string Exact(decimal? value) => value is { } amount ? FormattableString.Invariant($"{amount}") : "not known";
        WorkingInput Given(string name, decimal? value, string unit) => new(name, (double?)value, value is null ? "" : unit, value is null ? "not written" : unit == currency ? $"{Exact(value)}, {at}" : at);
        var sum = Sum;
        return new Working(
            "(price + variations − hours · hour − goods − journeys · visit − variations' cost) / (price + variations)",
            [
                Given("price without tax", Row.Price, currency), Given("variations, charged", Row.VariationPrice, currency), Given("hours estimated", Row.Estimated, "h"), Given("hours worked", Row.Worked, "h"),
                Given("hours of coming back", BackHours, "h"), Given("an hour costs", Row.HourCost, currency), Given("goods", Row.Material, currency), Given("variations, cost", Row.VariationCost, currency),
                Given("visits", Row.Visits, ""), Given("call-backs", Row.CallBacks, ""), Given("a visit costs", Row.Visit, currency),
            ],
            [
                .. Costs.Select(cost => new WorkingStep(cost.Name, $"{cost.How}, {Exact(cost.Amount)}", (double?)cost.Amount, currency)),
                new("brought", $"price + variations, {Exact(sum.Revenue)}", (double?)sum.Revenue, currency),
                new("cost", $"the sum of them, {Exact(sum.Cost)}", (double?)sum.Cost, currency),
                new("margin", "(brought − cost) / brought", 100 * (double?)sum.Margin, "%"),
            ],
            "arithmetic; a margin is a share of the price, a mark-up would be one of the cost");
    }
}

using Headroom.Domain.Ledgers;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Record;

/// <summary>Tells how two failure rates were compared.</summary>
public static class ComparisonWorking
{
    private const string Exact = "given x₁ + x₂ failures, x₁ is binomial with T₁ / (T₁ + T₂)";
    private const string Source = "exact conditional test of two Poisson rates; ratio by Clopper and Pearson's limits";

    /// <summary>The working of two models.</summary>
    /// <param name="pair">The comparison.</param>
    /// <returns>The working.</returns>
    public static Working Of(ModelComparison pair)
    {
        var steps = new List<WorkingStep>(Ratio(pair.Ratio)) { new("uneven by chance", "two-sided, as or less likely", 100 * pair.Chance, "%"), new($"{pair.First} fails more often", "P(Beta(x₁ + ½, x₂ + ½) > T₁ / (T₁ + T₂))", 100 * pair.FailsMore, "%") };
        if (pair.ChanceWithin is { } within)
            steps.Add(new("hot and cool taken apart, looked for afterwards", "binomials of the strata convolved", 100 * within, "%"));
        return new Working(Exact, [.. Inputs(pair.First, pair.One), .. Inputs(pair.Second, pair.Other), .. pair.Within.SelectMany((stratum, index) => Within(index == 0 ? "hot" : "cool", stratum))], steps, Source);
    }

    /// <summary>The working of hot and cool places.</summary>
    /// <param name="places">The comparison.</param>
    /// <returns>The working.</returns>
    public static Working Of(PlaceComparison places) => new(
        Exact, [.. Inputs("hot", places.Hot), .. Inputs("cool", places.Cool)], [.. Ratio(places.Ratio), new("uneven by chance, looked for afterwards", "two-sided, as or less likely", 100 * places.Chance, "%")], Source);

    private static IEnumerable<WorkingInput> Within(string place, (FieldRecord One, FieldRecord Other) stratum) =>
        Inputs($"the first, {place}", stratum.One).Concat(Inputs($"the second, {place}", stratum.Other));

    private static WorkingInput[] Inputs(string name, FieldRecord seen) => [new($"failed: {name}", seen.Failures, "", "failures.csv"), new($"in service: {name}", seen.Hours, "h", "fleet.csv")];

    private static WorkingStep[] Ratio(RateRatio ratio) =>
    [
        new("ratio of the rates", ratio.Ratio is null ? "the second has no failure" : "(x₁ / T₁) / (x₂ / T₂)", ratio.Ratio, ""), new("from, with 95 %", "Beta quantiles, turned into a ratio", ratio.Least, ""), new("to", ratio.Most is null ? "no end" : "likewise", ratio.Most, ""),
    ];
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Sums.MeasuredDraws;

/// <summary>What many units draw together at a new site, from readings at a few.</summary>
internal static class DrawFromSites
{
    private static readonly QuantityInput Means = new("site-means", "the mean reading of one unit at each site", Watts.Units, new(0.1, 100, "W")) { IsList = true, Count = (1, 60), ListExample = "6.2 W, 6.9 W, 6.4 W" };
    private static readonly NumberInput Each = new("readings-each", "how many readings stand behind each mean", new(1, 1000)) { Default = "1", DefaultWhy = "one unit was read at each site" };
    private static readonly QuantityInput Spread = new("unit-spread", "how far units of one site differ, as a standard deviation", Watts.Units, new(0.01, 20, "W"));
    private static readonly NumberInput Units = new("units", "how many units the new site has", new(1, 1000));
    private static readonly QuantityInput Expected = new("expected", "what one unit is believed to draw beforehand: 0.7 of its plate where nothing else is known", Watts.Units, new(0.1, 100, "W"));
    private static readonly QuantityInput ExpectedSpread = new("expected-spread", "how sure that is: 0.17 of its plate", Watts.Units, new(0.01, 50, "W"));
    private static readonly QuantityInput SiteSpread = new("site-spread", "how far sites are believed to differ: 0.055 of its plate", Watts.Units, new(0.01, 20, "W"));

    private static readonly SumOutput Together = new("together", "W", "that all but one of a hundred new sites keep to");
    private static readonly SumOutput Mean = new("mean", "W", "of one unit at a new site");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "draw-from-sites",
        Discipline = MeasuredSums.Discipline,
        Answers = "what will many units draw at a new site, going by readings at a few?",
        Inputs = [Means, Each, Spread, Units, Expected, ExpectedSpread, SiteSpread],
        Outputs = [Together, Mean],
        Formula = "N units ~ N(N m, N² (τ² + V) + N σ²), weighed over the spread of sites τ",
        Source = "hierarchical normal model, half-normal belief of τ (Bayesian Data Analysis, 3rd edition, 5.4)",
        Example = "site-means 6.2 W, 6.9 W, 6.4 W readings-each 3 unit-spread 0.25 W units 16 expected 7.4 W expected-spread 1.8 W site-spread 0.6 W",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        List<SiteReadings> sites = [.. given.All(Means).Select((mean, at) => new SiteReadings($"{at}", [.. Enumerable.Repeat(mean, (int)given[Each])]))];
        var model = DrawModel.Fit(sites, given[Spread], new DrawPrior(given[Expected], given[ExpectedSpread], given[SiteSpread]));
        var (units, mean) = ((int)given[Units], model.MeanWatts);
        var together = model.Together(units, DrawTotal.Chance);
        return new SumAnswer($"All but one of a hundred new sites draw no more than {new Told(together, "W")}.", [Together.Is(together), Mean.Is(mean)],
        [
            new("m", "readings and belief, each weighed by how sure it is", mean, "W"),
            new("N m", $"{Words.Of(units)} · {Words.Of(mean)} W", units * mean, "W"),
            new("on top", "for the site, the mean and the units", together - units * mean, "W"),
        ])
        {
            Notes = sites.Count < FittedDraw.EnoughSites ? [$"Below five sites the belief beforehand decides more than the readings."] : [],
        };
    }
}

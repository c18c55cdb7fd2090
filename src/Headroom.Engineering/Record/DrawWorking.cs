using Headroom.Domain.Ledgers;
using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Record;

/// <summary>Tells what the readings of a model's draw come to.</summary>
public static class DrawWorking
{
    /// <summary>The working of a fit.</summary>
    /// <param name="fitted">The fit.</param>
    /// <returns>The working.</returns>
    public static Working Of(FittedDraw fitted) => new(
        "N units at a new site ~ N(N m, N² (τ² + V) + N σ²), weighed over the spread of sites τ",
        [
            new("most by the catalogue", fitted.NameplateWatts, "W", "catalogue"),
            .. fitted.Sites.Select(site => new WorkingInput("mean of a site", site.MeanWatts, "W", $"{site.Site}, {Words.Count(site.Watts.Count, "reading")}")),
        ],
        [
            new("units of one site differ by", "pooled over the sites, with a floor", fitted.UnitWatts, "W"),
            new("mean of one at a new site", "readings and belief, each weighed by how sure it is", fitted.Draw.MeanWatts, "W"),
            new("one unit", "all but one of a hundred new sites keep to it", fitted.Draw.Together(1, DrawTotal.Chance), "W"),
            new("ten units together", "likewise", fitted.Draw.Together(10, DrawTotal.Chance), "W"),
        ],
        "hierarchical normal model, half-normal belief of τ (Bayesian Data Analysis, 3rd edition, 5.4)");
}

using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Tests.MeasuredDraws;

/// <summary>Properties of draws fitted to readings; all figures are invented.</summary>
public sealed class DrawModelTests
{
    private static readonly Gen<SiteReadings[]> Sites = Gen.Double[2, 9].Array[1, 4].Select(watts => new SiteReadings("site", watts)).Array[1, 6];

    private static DrawModel Fit(IReadOnlyList<SiteReadings> sites, int steps = 200) => DrawModel.Fit(sites, UnitSpread.Watts(sites), DrawPrior.Of(9), steps);

    [Fact]
    public void More_units_never_draw_less_together() => Sites.Sample(
        sites => Fit(sites).Together(6, 0.99) <= Fit(sites).Together(7, 0.99) + 1e-6, iter: 100);

    [Fact]
    public void A_greater_chance_never_asks_for_less() => Sites.Sample(
        sites => Fit(sites).Together(6, 0.95) <= Fit(sites).Together(6, 0.99) + 1e-6, iter: 100);

    [Fact]
    public void What_is_set_aside_is_kept_with_the_chance_asked_for() => Sites.Sample(
        sites => Math.Abs(Fit(sites).Below(5, Fit(sites).Together(5, 0.99)) - 0.99) < 1e-5, iter: 100);

    [Fact]
    public void Every_reading_higher_by_a_watt_raises_the_mean_by_no_more_than_that() => Sites.Sample(sites =>
    {
        // With the spread of units held, so that only the readings move.
        var higher = Array.ConvertAll(sites, site => site with { Watts = [.. site.Watts.Select(watts => watts + 1)] });
        var (before, after) = (DrawModel.Fit(sites, 0.3, DrawPrior.OfSites(0.5), 200).MeanWatts, DrawModel.Fit(higher, 0.3, DrawPrior.OfSites(0.5), 200).MeanWatts);
        return Math.Abs(after - before - 1) < 1e-6;
    }, iter: 100);

    [Fact]
    public void With_many_sites_that_agree_the_total_comes_down_to_what_was_read()
    {
        SiteReadings[] Of(int count) => [.. Enumerable.Range(0, count).Select(_ => new SiteReadings("site", [5.0, 5.1, 4.9]))];
        var (one, five, many) = (Fit(Of(1)).Together(24, 0.99), Fit(Of(5)).Together(24, 0.99), Fit(Of(60)).Together(24, 0.99));
        Assert.True(one > five && five > many, $"{one}, {five}, {many}");
        Assert.InRange(many, 24 * 5.0, 24 * 5.0 * 1.03);
    }

    [Fact]
    public void On_the_grid_and_by_bisection_one_model_comes_to_the_same() => Sites.Sample(sites =>
    {
        var model = Fit(sites);
        var exact = model.Together(8, 0.99);
        return DrawGrid.Of(model, 8, 8 * 25.5, 0.1).Quantile(0.99) is var grid && (exact > 8 * 25.5 || (grid >= exact - 1e-6 && grid <= exact + 0.1 + 1e-6));
    }, iter: 50);

    [Fact]
    public void The_coarse_grid_of_a_study_is_within_a_tenth_of_a_watt_of_the_fine_one() => Sites.Sample(
        sites => Math.Abs(Fit(sites, 400).Together(24, 0.99) - Fit(sites, 2000).Together(24, 0.99)) < 0.1, iter: 30);

    [Fact]
    public void Nothing_counts_for_more_than_the_ports_grant()
    {
        var fitted = new FittedDraw("x", "typical", [new("a", [12.0])], 15, 0.6, Fit([new SiteReadings("a", [12.0])]));
        Assert.Equal(4 * 7, DrawTotal.Of([new(fitted, 4, 4 * 7)]).Watts, 1e-9);
        Assert.Equal(8 * 7, DrawTotal.Of([new(fitted, 4, 4 * 7), new(fitted, 4, 4 * 7)]).Watts, 0.11);
    }

    [Fact]
    public void Few_readings_are_blended_with_the_usual_spread_and_a_spread_of_nothing_is_never_believed()
    {
        Assert.Equal(0.05 * 8, UnitSpread.Watts([new("a", [8.0])]), 1e-12);
        Assert.Equal(0.03 * 8, UnitSpread.Watts([new("a", [8, 8, 8, 8, 8])]), 1e-12);
        Assert.Equal(0.1, UnitSpread.Watts([new("a", [2, 2, 2, 2, 2])]), 1e-12);
        // By hand: squares 2 x 0.5² = 0.5 of one degree of freedom, and three of (0.05 x 8)² = 0.48: √(0.98 / 4).
        Assert.Equal(Math.Sqrt(0.98 / 4), UnitSpread.Watts([new("a", [7.5, 8.5])]), 1e-12);
    }
}

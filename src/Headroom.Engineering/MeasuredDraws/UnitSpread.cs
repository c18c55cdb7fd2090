namespace Headroom.Engineering.MeasuredDraws;

/// <summary>How far units of one model differ at one site.</summary>
public static class UnitSpread
{
    /// <summary>Least spread as a share of the mean [1]: an engineering guess.</summary>
    public const double LeastShare = 0.03;

    /// <summary>Spread taken, as a share of the mean, as long as few readings tell it [1]: an engineering guess.</summary>
    public const double UsualShare = 0.05;

    /// <summary>The step in which switches tell watts [W]: common practice, no source.</summary>
    public const double MeterStepWatts = 0.1;

    /// <summary>Readings beyond one a site from which the spread is believed as read [1]: an engineering guess.</summary>
    private const int EnoughFreedom = 4;

    /// <summary>Standard deviation of units within a site, pooled over the sites [W].</summary>
    /// <param name="sites">The readings; one site at least.</param>
    /// <returns>The spread, never below the meter's step or 3 % of the mean; blended with 5 % of the mean while few readings tell it [W].</returns>
    /// <remarks>Source: pooled variance, any textbook; floor and blend are engineering guesses.</remarks>
    public static double Watts(IReadOnlyList<SiteReadings> sites)
    {
        var readings = sites.Sum(site => site.Watts.Count);
        var mean = sites.Sum(site => site.Watts.Sum()) / readings;
        var freedom = readings - sites.Count;
        var squares = sites.Sum(site => site.SquaresAround);
        var usual = UsualShare * mean;
        var variance = freedom >= EnoughFreedom ? squares / freedom : (squares + (EnoughFreedom - freedom) * usual * usual) / EnoughFreedom;
        return Math.Max(Math.Sqrt(variance), Math.Max(MeterStepWatts, LeastShare * mean));
    }
}

namespace Headroom.Engineering.MeasuredDraws;

/// <summary>What is believed of a model's draw before anything is read.</summary>
/// <param name="MeanWatts">Where its mean is expected [W]; without meaning where <paramref name="SpreadWatts"/> is infinite.</param>
/// <param name="SpreadWatts">Standard deviation of that expectation [W]; infinite where nothing is expected.</param>
/// <param name="SiteWatts">How far sites are expected to differ: the scale of a half-normal belief [W]; above 0.</param>
public sealed record DrawPrior(double MeanWatts, double SpreadWatts, double SiteWatts)
{
    /// <summary>Expected mean as a share of the nameplate [1]: an engineering guess.</summary>
    public const double MeanShare = 0.7;

    /// <summary>Spread of that expectation as a share of the nameplate [1]: an engineering guess.</summary>
    public const double SpreadShare = 0.17;

    /// <summary>Expected difference of sites as a share of the nameplate [1]: an engineering guess.</summary>
    public const double SiteShare = 0.055;

    /// <summary>The belief that a nameplate gives.</summary>
    /// <param name="nameplateWatts">The catalogue's most in that mode [W]; above 0.</param>
    /// <returns>The belief.</returns>
    /// <remarks>Source: engineering guesses, told with every figure.</remarks>
    public static DrawPrior Of(double nameplateWatts)
    {
        Require.Above0(nameplateWatts, "W");
        return new(MeanShare * nameplateWatts, SpreadShare * nameplateWatts, SiteShare * nameplateWatts);
    }

    /// <summary>No expectation of the mean, only of the difference of sites.</summary>
    /// <param name="siteWatts">The scale of that difference [W]; above 0.</param>
    /// <returns>The belief.</returns>
    /// <remarks>Source: flat belief of a mean, any textbook.</remarks>
    public static DrawPrior OfSites(double siteWatts) => new(0, double.PositiveInfinity, siteWatts);
}

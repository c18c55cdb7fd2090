namespace Headroom.Engineering.MeasuredDraws;

/// <summary>Two levels of normal spread: a reading is the model's mean, what its site adds, and what the unit adds.</summary>
/// <remarks>The spread between sites is never one figure: it is a grid of them, each with its weight, so that few sites never pass for none.</remarks>
public sealed class DrawModel
{
    private readonly double[] _weights;
    private readonly double[] _means;
    private readonly double[] _variances;
    private readonly double _unitWatts;

    private DrawModel(double[] weights, double[] means, double[] variances, double unitWatts) =>
        (_weights, _means, _variances, _unitWatts) = (weights, means, variances, unitWatts);

    /// <summary>The expected draw of one unit at a new site [W].</summary>
    public double MeanWatts
    {
        get
        {
            var mean = 0.0;
            for (var i = 0; i < _weights.Length; i++)
                mean += _weights[i] * _means[i];
            return mean;
        }
    }

    /// <summary>Fits the readings.</summary>
    /// <param name="sites">The readings by site; one site at least.</param>
    /// <param name="unitWatts">Standard deviation of units within a site [W]; above 0.</param>
    /// <param name="prior">What is believed beforehand.</param>
    /// <param name="steps">Into how many steps the spread between sites is cut, from 0 to six times what is expected [1]; 2 or more.</param>
    /// <returns>The fitted model.</returns>
    /// <remarks>Source: hierarchical normal model with a half-normal belief (A. Gelman and others, Bayesian Data Analysis, 3rd edition, 5.4), mean integrated exactly, spread by trapezoids.</remarks>
    public static DrawModel Fit(IReadOnlyList<SiteReadings> sites, double unitWatts, DrawPrior prior, int steps = 2000)
    {
        Require.Above0(unitWatts, "W");
        var (weights, means, variances) = (new double[steps + 1], new double[steps + 1], new double[steps + 1]);
        var most = double.NegativeInfinity;
        for (var i = 0; i <= steps; i++)
        {
            var between = 6 * prior.SiteWatts * i / steps;
            (weights[i], means[i], variances[i]) = At(between, (sites, unitWatts, prior));
            variances[i] += between * between;
            most = Math.Max(most, weights[i]);
        }

        var sum = 0.0;
        for (var i = 0; i <= steps; i++)
            sum += weights[i] = Math.Exp(weights[i] - most) * (i == 0 || i == steps ? 0.5 : 1);
        for (var i = 0; i <= steps; i++)
            weights[i] /= sum;
        return new(weights, means, variances, unitWatts);
    }

    /// <summary>The chance that so many units at a new site draw no more than so much together [1].</summary>
    /// <param name="units">How many [1]; 1 or more.</param>
    /// <param name="watts">How much together [W].</param>
    /// <returns>The chance [1].</returns>
    /// <remarks>Source: as <see cref="Fit"/>: N units ~ N(N m, N² (τ² + V) + N σ²), weighed over the grid of τ.</remarks>
    public double Below(int units, double watts)
    {
        var chance = 0.0;
        for (var i = 0; i < _weights.Length; i++)
        {
            var deviation = Math.Sqrt(units * (units * _variances[i] + _unitWatts * _unitWatts));
            chance += _weights[i] * NormalTail.Below((watts - units * _means[i]) / deviation);
        }

        return chance;
    }

    /// <summary>What so many units at a new site draw together, with a chance that it is no more [W].</summary>
    /// <param name="units">How many [1]; 1 or more.</param>
    /// <param name="chance">The chance [1]; above 0 and below 1.</param>
    /// <returns>The watts [W].</returns>
    /// <remarks>Source: as <see cref="Below"/>, turned round by bisection.</remarks>
    public double Together(int units, double chance)
    {
        Require.Share(chance);
        var (low, high) = (0.0, units * Math.Max(1, MeanWatts));
        while (Below(units, low) > chance)
            low -= high;
        while (Below(units, high) < chance)
            high *= 2;
        while (high - low > 1e-7 * Math.Max(1, high))
        {
            var middle = (low + high) / 2;
            if (Below(units, middle) < chance)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    private static (double LogWeight, double Mean, double Variance) At(double between, (IReadOnlyList<SiteReadings> Sites, double UnitWatts, DrawPrior Prior) of)
    {
        var prior = double.IsInfinity(of.Prior.SpreadWatts) ? 0 : 1 / (of.Prior.SpreadWatts * of.Prior.SpreadWatts);
        var (precision, pull, log) = (prior, prior * of.Prior.MeanWatts, 0.0);
        foreach (var site in of.Sites)
        {
            var weight = 1 / (of.UnitWatts * of.UnitWatts / site.Watts.Count + between * between);
            precision += weight;
            pull += weight * site.MeanWatts;
            log += Math.Log(weight) / 2;
        }

        var mean = pull / precision;
        foreach (var site in of.Sites)
        {
            var weight = 1 / (of.UnitWatts * of.UnitWatts / site.Watts.Count + between * between);
            log -= weight * (site.MeanWatts - mean) * (site.MeanWatts - mean) / 2;
        }

        log -= prior * (of.Prior.MeanWatts - mean) * (of.Prior.MeanWatts - mean) / 2;
        var share = between / of.Prior.SiteWatts;
        return (log - Math.Log(precision) / 2 - share * share / 2, mean, 1 / precision);
    }
}

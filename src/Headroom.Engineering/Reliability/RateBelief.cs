namespace Headroom.Engineering.Reliability;

/// <summary>What is believed of a failure rate: worth a number of failures in a number of hours.</summary>
/// <param name="Failures">The shape, worth so many failures [1]; above 0.</param>
/// <param name="Hours">The hours they are worth [h]; above 0.</param>
public sealed record RateBelief(double Failures, double Hours)
{
    /// <summary>The mean rate [1/h].</summary>
    public double MeanRate => Failures / Hours;

    /// <summary>The belief after failures were seen.</summary>
    /// <param name="failures">Failures seen; 0 or more.</param>
    /// <param name="hours">Hours in service in which they were seen, of all units together [h]; 0 or more.</param>
    /// <returns>The new belief.</returns>
    /// <remarks>Source: Gamma prior and Poisson counts, NIST/SEMATECH e-Handbook 8.4.6.</remarks>
    public RateBelief After(int failures, double hours)
    {
        Require.Between(0, int.MaxValue, failures);
        Require.AtLeast(0, hours, "h");
        return new(Failures + failures, Hours + hours);
    }
}

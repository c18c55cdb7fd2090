namespace Headroom.Engineering.Power;

/// <summary>The least load by which a device shows that it is still there.</summary>
/// <param name="Amperes">Current while it lasts [A].</param>
/// <param name="OnSeconds">Time with the current, at least [s].</param>
/// <param name="OffSeconds">Time without it, at most [s].</param>
public sealed record KeepAlivePulse(double Amperes, double OnSeconds, double OffSeconds)
{
    /// <summary>Mean current of the pulse train [A].</summary>
    public double MeanAmperes => Amperes * OnSeconds / (OnSeconds + OffSeconds);
}

namespace Headroom.Engineering.Failure;

/// <summary>Which share of the time something works, by itself, in a row and side by side.</summary>
public static class Availability
{
    /// <summary>Hours of a year, as figures of availability count them [h].</summary>
    public const double HoursOfAYear = 8760;

    /// <summary>Share of the time that a thing works [1].</summary>
    /// <param name="hoursBetween">Mean time between failures [h]; above 0.</param>
    /// <param name="repairHours">Mean time until it works again [h]; 0 or more.</param>
    /// <returns>Share [1].</returns>
    /// <remarks>Source: A = MTBF / (MTBF + MTTR), textbooks.</remarks>
    public static double Of(double hoursBetween, double repairHours)
    {
        Require.Above0(hoursBetween, "h");
        Require.AtLeast(0, repairHours, "h");
        return hoursBetween / (hoursBetween + repairHours);
    }

    /// <summary>Share of the time that all things of a row work [1].</summary>
    /// <param name="shares">Share of each [1]; each 0 to 1.</param>
    /// <returns>The product [1].</returns>
    /// <remarks>Source: things in a row fail one by one, textbooks.</remarks>
    public static double InARow(IEnumerable<double> shares) => shares.Aggregate(1.0, (all, share) => all * share);

    /// <summary>Share of the time that two alike side by side do not both fail [1].</summary>
    /// <param name="share">Share of one [1]; 0 to 1.</param>
    /// <param name="commonShare">Share of failures that strike both at once [1]; 0 to 1.</param>
    /// <returns>Share [1].</returns>
    /// <remarks>Source: beta factor, U₂ = ((1 − β) U)² + β U; IEC 61508-6, annex D, from memory.</remarks>
    public static double SideBySide(double share, double commonShare)
    {
        var lost = 1 - Checked(share);
        var own = (1 - Checked(commonShare)) * lost;
        return 1 - (own * own + commonShare * lost);
    }

    /// <summary>Hours of a year in which it does not work [h].</summary>
    /// <param name="share">Share of the time that it works [1]; 0 to 1.</param>
    /// <returns>Hours a year [h].</returns>
    /// <remarks>Source: 8760 (1 − A).</remarks>
    public static double HoursLost(double share) => (1 - Checked(share)) * HoursOfAYear;

    /// <summary>How often two things side by side are down together [1/h].</summary>
    /// <param name="firstRate">Failures of the one [1/h]; 0 or more.</param>
    /// <param name="secondRate">Failures of the other [1/h]; 0 or more.</param>
    /// <param name="firstRepairHours">Time to mend the one [h]; 0 or more.</param>
    /// <param name="secondRepairHours">Time to mend the other [h]; 0 or more.</param>
    /// <returns>Failures of both [1/h].</returns>
    /// <remarks>Source: λ₁ λ₂ (r₁ + r₂); Billinton and Allan, Reliability Evaluation of Power Systems, chapter 11.</remarks>
    public static double RateOfBoth(double firstRate, double secondRate, double firstRepairHours, double secondRepairHours)
    {
        Require.AtLeast(0, firstRate, "1/h");
        Require.AtLeast(0, secondRate, "1/h");
        Require.AtLeast(0, firstRepairHours, "h");
        Require.AtLeast(0, secondRepairHours, "h");
        return firstRate * secondRate * (firstRepairHours + secondRepairHours);
    }

    /// <summary>How long two things side by side stay down together [h].</summary>
    /// <param name="firstRepairHours">Time to mend the one [h]; above 0.</param>
    /// <param name="secondRepairHours">Time to mend the other [h]; above 0.</param>
    /// <returns>Mean time [h].</returns>
    /// <remarks>Source: r₁ r₂ / (r₁ + r₂); Billinton and Allan, Reliability Evaluation of Power Systems, chapter 11.</remarks>
    public static double HoursOfBoth(double firstRepairHours, double secondRepairHours)
    {
        Require.Above0(firstRepairHours, "h");
        Require.Above0(secondRepairHours, "h");
        return firstRepairHours * secondRepairHours / (firstRepairHours + secondRepairHours);
    }

    private static double Checked(double share) => share is >= 0 and <= 1 ? share
        : throw new ArgumentOutOfRangeException(nameof(share), share, FormattableString.Invariant($"share is {share}; it must lie between 0 and 1."));
}

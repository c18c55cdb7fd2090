namespace Headroom.Engineering.Acoustics;

/// <summary>What a standard does with a reading that has the room in it, by how far it lies above the background.</summary>
/// <param name="Name">The standard, or the rule of this program.</param>
/// <param name="NothingFrom">From this difference on nothing is taken off [dB].</param>
/// <param name="LeastDifference">From this difference on the room is taken out by the formula [dB].</param>
/// <param name="Held">What is taken off below it, where the result is only an upper bound [dB]; null when nothing may be taken off.</param>
public sealed record BackgroundRule(string Name, double NothingFrom, double LeastDifference, double? Held)
{
    /// <summary>ISO 3744:2010 8.2.3 and ISO 10140-4, engineering grade.</summary>
    public static BackgroundRule Engineering { get; } = new("ISO 3744", 15, 6, 1.3);

    /// <summary>ISO 3746:2010, survey grade.</summary>
    public static BackgroundRule Survey { get; } = new("ISO 3746", 10, 3, 3);

    /// <summary>ISO 1996-2:2017: no correction below 3 dB, reported as an upper bound with both readings.</summary>
    public static BackgroundRule Environment { get; } = new("ISO 1996-2", 10, 3, null);

    /// <summary>ISO 11201:2010, grades 1 and 2.</summary>
    public static BackgroundRule Emission { get; } = new("ISO 11201 grade 1, 2", 15, 6, null);

    /// <summary>ISO 11201:2010, grade 3.</summary>
    public static BackgroundRule EmissionSurvey { get; } = new("ISO 11201 grade 3", 10, 3, null);

    /// <summary>ASTM E336-11: 2 dB below 5 dB, the limit of measurement.</summary>
    public static BackgroundRule Insulation { get; } = new("ASTM E336", 10, 5, 2);

    /// <summary>The rule of this program, built on the survey grade: the formula is continuous, so it is used up to 15 dB.</summary>
    public static BackgroundRule Own { get; } = new("survey grade, continuous", 15, 3, BackgroundCorrection.MostHeld);

    /// <summary>What is taken off a reading.</summary>
    /// <param name="difference">Reading - background [dB].</param>
    /// <returns>The correction [dB] and whether the result is only an upper bound.</returns>
    /// <remarks>Source: as the rule's name says; K1 = −10 lg(1 − 10^(−ΔL/10)).</remarks>
    public (double K1, bool UpperBound) At(double difference) =>
        difference >= NothingFrom ? (0, false)
        : difference >= LeastDifference ? (BackgroundCorrection.K1(difference), false)
        : (Held ?? 0, true);
}

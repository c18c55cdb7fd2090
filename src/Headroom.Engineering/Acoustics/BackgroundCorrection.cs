namespace Headroom.Engineering.Acoustics;

/// <summary>Takes the room out of a reading, with the limits within which that can be done and what it does to the uncertainty.</summary>
public static class BackgroundCorrection
{
    /// <summary>What is taken off below 3 dB above the background [dB]: ISO 3746:2010, survey grade.</summary>
    public const double MostHeld = 3.0;

    // 95 % of a normal distribution lie below this many standard deviations.
    private const double OneSided95 = 1.645;

    /// <summary>How much of a reading is the room.</summary>
    /// <param name="difference">Reading - background [dB]; above 0.</param>
    /// <returns>The correction K1 [dB].</returns>
    /// <remarks>Source: ISO 3744:2010, formula (16): −10 lg(1 − 10^(−ΔL/10)).</remarks>
    public static double K1(double difference)
    {
        Require.Above0(difference, "dB");
        return -10 * Math.Log10(1 - Levels.Energy(-difference));
    }

    /// <summary>The source alone, out of a reading with it and one without.</summary>
    /// <param name="reading">The level with the source running [dB].</param>
    /// <param name="background">The level without it [dB].</param>
    /// <returns>The level of the source [dB], null when the two contradict each other; at most that where the branch says so.</returns>
    /// <remarks>Source: formula of ISO 3744:2010 (16); its limits are the program's own rule, built on the survey grade of ISO 3746:2010.</remarks>
    public static (double? Level, BackgroundBranch Branch) SourceAlone(double reading, double background)
    {
        var difference = reading - background;
        if (difference < 0)
            return (null, BackgroundBranch.Contradicts);
        var (k1, bound) = BackgroundRule.Own.At(difference);
        return (reading - k1, bound ? BackgroundBranch.AtMost : k1 > 0 ? BackgroundBranch.Corrected : BackgroundBranch.AsRead);
    }

    /// <summary>How a change of the reading and of the background pass through the subtraction.</summary>
    /// <param name="difference">Reading - background [dB]; above 0.</param>
    /// <returns>dB of the source for each dB of the reading, and of the background [1]; the first is the second and 1.</returns>
    /// <remarks>Source: ISO/IEC Guide 98-3, 5.1.2, applied to the subtraction: a = 1/(1 − 10^(−ΔL/10)), b = a − 1.</remarks>
    public static (double A, double B) Sensitivity(double difference)
    {
        Require.Above0(difference, "dB");
        var a = 1 / (1 - Levels.Energy(-difference));
        return (a, a - 1);
    }

    /// <summary>Standard uncertainty of the source alone, of the part in which the two readings do not err alike.</summary>
    /// <param name="difference">Reading - background [dB]; above 0, and 3 or more for the answer to be of use.</param>
    /// <param name="ofReading">Standard uncertainty of the reading [dB].</param>
    /// <param name="ofBackground">Standard uncertainty of the background [dB].</param>
    /// <returns>The standard uncertainty [dB].</returns>
    /// <remarks>Source: ISO/IEC Guide 98-3, 5.1.2: √((a u1)² + (b u2)²).</remarks>
    public static double Uncertainty(double difference, double ofReading, double ofBackground)
    {
        var (a, b) = Sensitivity(difference);
        return Precision.RootSum(a * ofReading, b * ofBackground);
    }

    /// <summary>The level below which the source lies in 95 of 100 cases, on the safe side.</summary>
    /// <param name="reading">The level with the source running [dB], with its standard uncertainty.</param>
    /// <param name="background">The level without it [dB], with its standard uncertainty.</param>
    /// <returns>The level [dB]; null when not even the two far ends leave anything for a source.</returns>
    /// <remarks>Source: both readings moved by 1.645 standard uncertainties against each other, then ISO 3744:2010 (16).</remarks>
    public static double? UpperBound95(Estimate reading, Estimate background)
    {
        var most = reading.Value + OneSided95 * reading.Uncertainty;
        var least = background.Value - OneSided95 * background.Uncertainty;
        return Levels.Of(Levels.Energy(most) - Levels.Energy(least));
    }
}

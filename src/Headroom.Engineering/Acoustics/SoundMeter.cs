namespace Headroom.Engineering.Acoustics;

/// <summary>How well a hand-held instrument reads a level.</summary>
public static class SoundMeter
{
    /// <summary>Standard uncertainty of a class 1 instrument as a whole [dB]: ISO 9612:2009, table C.5, from memory.</summary>
    public const double Class1 = 0.7;

    /// <summary>The same of class 2 [dB].</summary>
    public const double Class2 = 1.5;

    /// <summary>The same of a telephone or of an instrument nobody knows [dB]: common practice, no source.</summary>
    public const double Phone = 3.0;

    /// <summary>What one reading differs from the next [dB] unless repeats are given: rule of this program.</summary>
    public const double Repeat = 0.5;

    // Two-sided 95 % of Student's distribution for 2 to 6 readings; computed.
    private static ReadOnlySpan<double> Student => [12.706, 4.303, 3.182, 2.776, 2.571];

    /// <summary>Standard uncertainty that an instrument has in all its readings alike.</summary>
    /// <param name="instrument">What people wrote: <c>class 2 meter</c>; null when nothing.</param>
    /// <param name="calibrated">Whether it is calibrated; null when not written.</param>
    /// <returns>The standard uncertainty [dB].</returns>
    public static double Common(string? instrument, bool? calibrated) =>
        instrument is null || calibrated == false ? Phone
        : instrument.Contains("class 1", StringComparison.OrdinalIgnoreCase) ? Class1
        : instrument.Contains("class 2", StringComparison.OrdinalIgnoreCase) ? Class2
        : Phone;

    /// <summary>Standard deviation of readings.</summary>
    /// <param name="levels">The readings [dB]; two or more.</param>
    /// <returns>s [dB]; null for fewer than two.</returns>
    /// <remarks>Source: ISO/IEC Guide 98-3, 4.2.2.</remarks>
    public static double? Deviation(IReadOnlyList<double> levels)
    {
        if (levels.Count < 2)
            return null;
        var mean = levels.Average();
        return Math.Sqrt(levels.Sum(level => (level - mean) * (level - mean)) / (levels.Count - 1));
    }

    /// <summary>Standard uncertainty of the mean of readings.</summary>
    /// <param name="levels">The readings [dB].</param>
    /// <returns>s / √n [dB]; the usual half decibel for fewer than three readings.</returns>
    /// <remarks>Source: ISO/IEC Guide 98-3, 4.2.3; ISO 9612:2009, C.2. Fewer than three readings say nothing of their spread: rule of this program.</remarks>
    public static double OfRepeats(IReadOnlyList<double> levels) =>
        levels.Count < 3 ? Repeat : Deviation(levels)!.Value / Math.Sqrt(levels.Count);

    /// <summary>Half the interval in which the mean of few readings lies in 95 of 100 cases.</summary>
    /// <param name="levels">The readings [dB]; 2 to 6.</param>
    /// <returns>t s / √n [dB]; null for fewer or more.</returns>
    /// <remarks>Source: Student's distribution, two-sided 95 %.</remarks>
    public static double? HalfWidth95(IReadOnlyList<double> levels) =>
        levels.Count is >= 2 and <= 6 ? Student[levels.Count - 2] * Deviation(levels)!.Value / Math.Sqrt(levels.Count) : null;

    /// <summary>Says whether readings lie so far apart that one is dropped or all are repeated.</summary>
    /// <param name="levels">The readings [dB].</param>
    /// <returns>True when the greatest is more than 3 dB above the least.</returns>
    /// <remarks>Source: ISO 9612:2009, 9.3, from memory.</remarks>
    public static bool TooFarApart(IReadOnlyList<double> levels) => levels.Count > 1 && levels.Max() - levels.Min() > 3;
}

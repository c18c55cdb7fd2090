using Headroom.Domain.Findings;

namespace Headroom.Domain.Catalogues;

/// <summary>The octave bands of a sound, from 63 Hz to 8 kHz, unweighted. They say how a level is spread; how high it is, the level beside them says.</summary>
/// <param name="Decibels">The eight band levels [dB].</param>
/// <param name="At">Where they stand.</param>
public sealed record OctaveLevels(IReadOnlyList<double> Decibels, Place At)
{
    /// <summary>The bands as people name them.</summary>
    public static IReadOnlyList<string> Names { get; } = ["63", "125", "250", "500", "1k", "2k", "4k", "8k"];
}

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>A space as far as it gives sound back.</summary>
/// <param name="Space">The space.</param>
/// <param name="Open">True outdoors, where nothing comes back.</param>
/// <param name="Absorption">Absorption area in the eight octaves [m²]; null when it cannot be worked out.</param>
/// <param name="Constant">Room constant in the eight octaves [m²]; null likewise.</param>
/// <param name="How">What it was worked out from, in words.</param>
/// <param name="Uncertainty">Standard uncertainty that the room brings in [dB].</param>
/// <param name="Question">What is to be found out; null when nothing.</param>
/// <param name="Assumed">What was assumed; null when nothing.</param>
public sealed record SoundRoom(
    Space Space, bool Open, double[]? Absorption, double[]? Constant, string How, double Uncertainty, string? Question, string? Assumed)
{
    /// <summary>Where the kilohertz lies among the octaves: for figures that stand for the room as a whole.</summary>
    public const int Kilohertz = 4;

    /// <summary>Share of a source's energy that the room gives back in a band [1/m²].</summary>
    /// <param name="band">The band, 0 for 63 Hz.</param>
    /// <returns>4/R; 0 outdoors.</returns>
    public double Returned(int band) => Open ? 0 : 4 / Constant![band];
}

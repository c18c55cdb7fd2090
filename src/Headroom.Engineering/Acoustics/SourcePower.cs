namespace Headroom.Engineering.Acoustics;

/// <summary>The sound power of a source at one fan level.</summary>
/// <param name="Level">The fan level.</param>
/// <param name="Power">A-weighted sound power level, of all alike together [dB]; null when not known.</param>
/// <param name="How">How it was come by, in words.</param>
/// <param name="Question">What is to be found out; null when nothing.</param>
/// <param name="Weights">How it is spread over the octaves: shares of the A-weighted energy, together 1 [1].</param>
/// <param name="Generic">True when the spread is the generic one.</param>
public sealed record SourcePower(int Level, Estimate? Power, string How, string? Question, double[] Weights, bool Generic);

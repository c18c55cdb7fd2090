using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>A reading close to a source, turned into a sound power.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Source">The source it was taken at.</param>
/// <param name="Level">The fan level under its conditions.</param>
/// <param name="Power">The sound power behind it [dB(A)]; at most that for an upper bound; null when nothing can be said.</param>
/// <param name="Bound">True when it is only an upper bound.</param>
/// <param name="Declared">The sound power that the catalogue has [dB(A)]; null when none.</param>
/// <param name="PerPower">Level at the meter less the sound power level [dB]; null when not known.</param>
/// <param name="Finding">What it means, in words.</param>
public sealed record UnitReading(
    Reading Reading, SoundSource Source, int Level, Estimate? Power, bool Bound, Estimate? Declared, double? PerPower, string Finding);

using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>What is heard of a device at one fan level, and what drives it there.</summary>
/// <param name="Level">The level, from 1.</param>
/// <param name="Power">Declared sound power level [dB re 1 pW, A-weighted]; null when only a pressure is known.</param>
/// <param name="Pressure">Sound pressure level at <paramref name="Distance"/> [dB(A)]; null when a power is known.</param>
/// <param name="Distance">The distance of the pressure [m]; null when a power is known.</param>
/// <param name="AboveInlet">The inlet temperature from which it runs at this level [°C]; null when temperature does not drive it or is not known.</param>
/// <param name="AbovePortWatts">The port watts from which it runs at this level [W]; null when load does not drive it or is not known.</param>
public sealed record FanLevel(
    int Level,
    Given<SoundPower>? Power,
    Given<SoundPressure>? Pressure,
    Given<Metres>? Distance,
    Given<Celsius>? AboveInlet,
    Given<Watts>? AbovePortWatts)
{
    /// <summary>Its octave bands; null when not known: then a generic spectrum of fans stands in, and says so.</summary>
    public OctaveLevels? Bands { get; init; }

    /// <summary>The air it moves at this level, all fans together [m³/h]; null when not known.</summary>
    public Given<CubicMetresPerHour>? Flow { get; init; }
}

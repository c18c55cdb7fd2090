namespace Headroom.Engineering.Acoustics;

/// <summary>What a data sheet declares of a device's sound, and what it means.</summary>
public static class DeclaredSound
{
    /// <summary>Between the mean of a batch and its declared upper value [dB], where nothing else is said: ISO 9296 default, from memory.</summary>
    public const double MeanToUpper = 3;

    /// <summary>Between the pressure at bystander positions and the sound power of a flat box in a rack unit's shape [dB]: box surface at 1 m.</summary>
    public const double BystanderToPower = 12;

    /// <summary>Below this a sound power of network equipment is almost certainly one in bels [dB]: rule of this program.</summary>
    public const double LeastPower = 15;

    /// <summary>Bels in decibels.</summary>
    /// <param name="bels">The level [B].</param>
    /// <returns>The level [dB].</returns>
    /// <remarks>Source: ISO 9296: sound power is declared in bels so that nobody takes it for a pressure; 1 B = 10 dB.</remarks>
    public static double FromBels(double bels) => 10 * bels;

    /// <summary>Mean of a batch behind a declared upper value.</summary>
    /// <param name="upper">The declared upper level L_WAd [dB].</param>
    /// <returns>The mean level L_WA,m [dB].</returns>
    /// <remarks>Source: ISO 9296, adder for verification, default from memory.</remarks>
    public static double Mean(double upper) => upper - MeanToUpper;

    /// <summary>Says whether a figure entered as decibels was meant in bels.</summary>
    /// <param name="power">The sound power level as entered [dB].</param>
    /// <returns>True below 15 dB.</returns>
    /// <remarks>Source: rule of this program.</remarks>
    public static bool LooksLikeBels(double power) => power < LeastPower;

    /// <summary>Sound power behind a pressure at bystander positions, where the size of the device is not known.</summary>
    /// <param name="pressure">Mean pressure level 1 m from the faces [dB].</param>
    /// <returns>The sound power level [dB], ± 3.</returns>
    /// <remarks>Source: box surface of ISO 3744 at 1 m for a device of one rack unit; spread from published pairs of both figures.</remarks>
    public static double PowerOfBystander(double pressure) => pressure + BystanderToPower;
}

namespace Headroom.Engineering.Acoustics;

/// <summary>Sound of a source in a room: what comes straight, and what the room gives back.</summary>
public static class RoomAcoustics
{
    // 24 ln 10 / c at 343 m/s, as rounded in the textbooks [s/m].
    private const double Sabine = 0.161;

    /// <summary>Reverberation time of a room that absorbs little.</summary>
    /// <param name="cubicMetres">Its volume [m³]; above 0.</param>
    /// <param name="absorption">Its absorption area A [m²]; above 0.</param>
    /// <returns>T60 [s].</returns>
    /// <remarks>Source: Sabine, 0.161 V / A; good up to a mean absorption of about 0.2.</remarks>
    public static double SabineSeconds(double cubicMetres, double absorption)
    {
        Require.Above0(cubicMetres, "m³");
        Require.Above0(absorption, "m²");
        return Sabine * cubicMetres / absorption;
    }

    /// <summary>Reverberation time of a room that absorbs more.</summary>
    /// <param name="cubicMetres">Its volume [m³]; above 0.</param>
    /// <param name="surface">All its surfaces [m²]; above 0.</param>
    /// <param name="meanAbsorption">Their mean absorption coefficient [1]; above 0, below 1.</param>
    /// <returns>T60 [s].</returns>
    /// <remarks>Source: Eyring, 0.161 V / (−S ln(1 − α)).</remarks>
    public static double EyringSeconds(double cubicMetres, double surface, double meanAbsorption)
    {
        Require.Above0(surface, "m²");
        Require.Share(meanAbsorption);
        return Sabine * cubicMetres / (-surface * Math.Log(1 - meanAbsorption));
    }

    /// <summary>Absorption area behind a measured reverberation time.</summary>
    /// <param name="cubicMetres">The volume [m³]; above 0.</param>
    /// <param name="seconds">T60 [s]; above 0.</param>
    /// <returns>A [m²].</returns>
    /// <remarks>Source: Sabine, solved for A; ISO 3382-2 measures the time.</remarks>
    public static double Absorption(double cubicMetres, double seconds) => SabineSeconds(cubicMetres, seconds);

    /// <summary>Room constant.</summary>
    /// <param name="absorption">Absorption area [m²]; above 0.</param>
    /// <param name="surface">All surfaces [m²]; above 0.</param>
    /// <returns>R = A / (1 − α) [m²]; infinite when all is absorbed, as in the open.</returns>
    /// <remarks>Source: Beranek, Noise and Vibration Control, from memory.</remarks>
    public static double Constant(double absorption, double surface)
    {
        Require.Above0(absorption, "m²");
        Require.Above0(surface, "m²");
        var mean = absorption / surface;
        return mean < 1 ? absorption / (1 - mean) : double.PositiveInfinity;
    }

    /// <summary>Distance at which the straight sound and what the room gives back are alike.</summary>
    /// <param name="directivity">Q [1]; above 0.</param>
    /// <param name="constant">Room constant R [m²]; above 0.</param>
    /// <returns>The critical distance [m].</returns>
    /// <remarks>Source: Q/(4 π r²) = 4/R, so √(Q R / (16 π)).</remarks>
    public static double CriticalMetres(double directivity, double constant) => Math.Sqrt(directivity * constant / (16 * Math.PI));

    /// <summary>Level of what the room gives back, less the sound power level.</summary>
    /// <param name="constant">Room constant R [m²]; above 0.</param>
    /// <returns>The difference [dB]; minus infinity in the open.</returns>
    /// <remarks>Source: diffuse field, 10 lg(4/R).</remarks>
    public static double ReverberantLessPower(double constant) => 10 * Math.Log10(4 / constant);

    /// <summary>Level at a place in a room, less the sound power level.</summary>
    /// <param name="directivity">Q of the source [1]; above 0.</param>
    /// <param name="metres">The distance [m]; above 0.</param>
    /// <param name="constant">Room constant R [m²]; above 0, infinite in the open.</param>
    /// <returns>The difference [dB]; ± 2 dB in rooms like a box, too high far away in long or very absorbent ones.</returns>
    /// <remarks>Source: diffuse-field theory, 10 lg(Q/(4 π r²) + 4/R).</remarks>
    public static double LevelLessPower(double directivity, double metres, double constant)
    {
        Require.Above0(constant == double.PositiveInfinity ? 1 : constant, "m²");
        return 10 * Math.Log10(PointSource.Share(directivity, metres) + 4 / constant);
    }
}

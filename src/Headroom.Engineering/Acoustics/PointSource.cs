namespace Headroom.Engineering.Acoustics;

/// <summary>Sound of a small source in the open.</summary>
public static class PointSource
{
    /// <summary>Level at a distance less the sound power level.</summary>
    /// <param name="directivity">Q: 1 free, 2 on a plane, 4 at an edge of two, 8 in a corner [1].</param>
    /// <param name="metres">The distance [m]; above 0.</param>
    /// <returns>The difference [dB].</returns>
    /// <remarks>Source: ISO 3744 and ISO 11203, 10 lg(Q / (4 π r²)).</remarks>
    public static double LevelLessPower(double directivity, double metres) => 10 * Math.Log10(Share(directivity, metres));

    /// <summary>The share behind it: direct energy for each unit of sound power.</summary>
    /// <param name="directivity">Q [1]; above 0.</param>
    /// <param name="metres">The distance [m]; above 0.</param>
    /// <returns>Q / (4 π r²) [1/m²].</returns>
    /// <remarks>Source: ISO 3744 and ISO 11203.</remarks>
    public static double Share(double directivity, double metres)
    {
        Require.Above0(directivity, "");
        Require.Above0(metres, "m");
        return directivity / (4 * Math.PI * metres * metres);
    }

    /// <summary>The distance at which a level is reached.</summary>
    /// <param name="power">Sound power level [dB].</param>
    /// <param name="directivity">Q [1]; above 0.</param>
    /// <param name="level">The level [dB].</param>
    /// <returns>The distance [m].</returns>
    /// <remarks>Source: the same, solved for r.</remarks>
    public static double Metres(double power, double directivity, double level) =>
        Math.Sqrt(directivity / (4 * Math.PI) * Levels.Energy(power - level));
}

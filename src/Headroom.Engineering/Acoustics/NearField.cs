namespace Headroom.Engineering.Acoustics;

/// <summary>Close to the outlet a source is no point: a reading there is never carried to a seat by the distance alone.</summary>
public static class NearField
{
    /// <summary>Effective radius of a flat switch, until readings of the model teach a better one [m]: invented prior of this program.</summary>
    public const double PriorRadius = 0.12;

    /// <summary>Standard uncertainty of a level carried by that radius [dB]: the same.</summary>
    public const double PriorUncertainty = 4;

    /// <summary>Level on the axis of an evenly radiating disc less its sound power level.</summary>
    /// <param name="radius">Radius of the disc [m]; above 0.</param>
    /// <param name="metres">Distance from it on its axis [m]; above 0.</param>
    /// <returns>The difference [dB]; far away that of a point on a plane.</returns>
    /// <remarks>Source: own derivation, 1/(2 π R²) averaged over the disc: 10 lg(ln(1 + a²/z²) / (2 π a²)).</remarks>
    public static double DiscLevelLessPower(double radius, double metres)
    {
        Require.Above0(radius, "m");
        Require.Above0(metres, "m");
        var square = radius * radius;
        return 10 * Math.Log10(Math.Log(1 + square / (metres * metres)) / (2 * Math.PI * square));
    }

    /// <summary>Level at a seat out of a reading right at the outlet.</summary>
    /// <param name="near">The reading at the outlet [dB].</param>
    /// <param name="radius">Effective radius of the source [m]; above 0.</param>
    /// <param name="metres">Distance of the seat [m]; above 0.</param>
    /// <returns>The level of the source alone at the seat [dB].</returns>
    /// <remarks>Source: rule of this program, L_near − L_far = 20 lg(r_far / r_eff).</remarks>
    public static double LevelAt(double near, double radius, double metres) => near - 20 * Math.Log10(metres / radius);

    /// <summary>Effective radius out of a reading at the outlet and one farther away.</summary>
    /// <param name="near">The reading at the outlet [dB].</param>
    /// <param name="far">The reading farther away [dB].</param>
    /// <param name="metres">The distance of the second [m]; above 0.</param>
    /// <returns>The radius [m].</returns>
    /// <remarks>Source: the same, solved for the radius.</remarks>
    public static double Radius(double near, double far, double metres) => metres * Math.Pow(10, (far - near) / 20);
}

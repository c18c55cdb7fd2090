namespace Headroom.Engineering.Acoustics;

/// <summary>Cabinets, cupboards and walls: what they keep of a sound.</summary>
public static class Enclosures
{
    /// <summary>Sound reduction of something made of several parts, such as a wall with a door and the gap under it.</summary>
    /// <param name="parts">Area and sound reduction of each; an opening has a reduction of 0.</param>
    /// <returns>The reduction of all of it [dB].</returns>
    /// <remarks>Source: ISO 12354-1; −10 lg(Σ S 10^(−R/10) / Σ S).</remarks>
    public static double Composite(params ReadOnlySpan<WallPart> parts)
    {
        var (area, through) = (0.0, 0.0);
        foreach (var part in parts)
        {
            area += part.SquareMetres;
            through += part.SquareMetres * Levels.Energy(-part.Reduction);
        }

        return -10 * Math.Log10(through / area);
    }

    /// <summary>Sound reduction of panels with openings.</summary>
    /// <param name="panels">Sound reduction of the panels [dB].</param>
    /// <param name="open">Share of the surface that is open [1]; 0 to 1.</param>
    /// <returns>The reduction [dB].</returns>
    /// <remarks>Source: ISO 12354-1; −10 lg((1 − p) 10^(−R/10) + p).</remarks>
    public static double WithOpenings(double panels, double open) => -10 * Math.Log10((1 - open) * Levels.Energy(-panels) + open);

    /// <summary>How much quieter a source is inside a small enclosure.</summary>
    /// <param name="panels">Sound reduction of the panels [dB].</param>
    /// <param name="open">Share of the surface that is open [1].</param>
    /// <param name="meanAbsorption">Mean absorption coefficient inside [1].</param>
    /// <returns>The insertion loss [dB], not below 0; ± 5 dB for a small cabinet close to its walls.</returns>
    /// <remarks>Source: textbook estimate for enclosures, from memory: R + 10 lg(α + p).</remarks>
    public static double InsertionLoss(double panels, double open, double meanAbsorption) =>
        Math.Max(0, WithOpenings(panels, open) + 10 * Math.Log10(meanAbsorption + open));

    /// <summary>Level in the next room less the level in this one.</summary>
    /// <param name="reduction">Sound reduction of the wall between [dB].</param>
    /// <param name="squareMetres">Area of the wall [m²]; above 0.</param>
    /// <param name="absorption">Absorption area of the next room [m²]; above 0.</param>
    /// <returns>The difference [dB].</returns>
    /// <remarks>Source: ISO 16283-1 and ISO 12354-1; −R + 10 lg(S/A).</remarks>
    public static double NextRoomLessThis(double reduction, double squareMetres, double absorption)
    {
        Require.Above0(squareMetres, "m²");
        Require.Above0(absorption, "m²");
        return -reduction + 10 * Math.Log10(squareMetres / absorption);
    }
}

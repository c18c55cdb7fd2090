namespace Headroom.Engineering.Cabling;

/// <summary>How far data cables are to be kept from mains cables.</summary>
public static class MainsSeparation
{
    /// <summary>Least distance from fluorescent fittings [m]. Source: EN 50174-2:2000.</summary>
    public const double FluorescentMetres = 0.130;

    /// <summary>The rating of a circuit that counts as one [A]. Source: EN 50174-2, from memory.</summary>
    public const double CircuitAmperes = 20;

    /// <summary>Least distance before the number of circuits is counted [mm].</summary>
    /// <param name="cable">The cable's class.</param>
    /// <param name="barrier">What lies between.</param>
    /// <returns>S [mm].</returns>
    /// <remarks>Source: EN 50174-2, seen in an electrical handbook; class a from memory.</remarks>
    public static double BaseMillimetres(SeparationClass cable, MainsBarrier barrier) => (cable, barrier) switch
    {
        (_, MainsBarrier.SolidMetal) => 0,
        (SeparationClass.A, MainsBarrier.PerforatedMetal) => 150,
        (SeparationClass.A, MainsBarrier.OpenMetal) => 225,
        (SeparationClass.A, _) => 300,
        (SeparationClass.B, MainsBarrier.PerforatedMetal) => 50,
        (SeparationClass.B, MainsBarrier.OpenMetal) => 75,
        (SeparationClass.B, _) => 100,
        (SeparationClass.C, MainsBarrier.PerforatedMetal) => 25,
        (SeparationClass.C, MainsBarrier.OpenMetal) => 38,
        (SeparationClass.C, _) => 50,
        (_, MainsBarrier.PerforatedMetal) => 5,
        (_, MainsBarrier.OpenMetal) => 8,
        _ => 10,
    };

    /// <summary>What the number of circuits multiplies the distance by [1].</summary>
    /// <param name="circuits">Single-phase circuits of up to 20 A; 0 or more.</param>
    /// <returns>P [1]: 0 without mains, 0.2 for every three up to 15, then 2 to 6.</returns>
    /// <remarks>Source: EN 50174-2, seen in an electrical handbook.</remarks>
    public static double CircuitFactor(int circuits) => circuits switch
    {
        <= 0 => 0,
        <= 15 => 0.2 * ((circuits + 2) / 3),
        <= 30 => 2,
        <= 45 => 3,
        <= 60 => 4,
        <= 75 => 5,
        _ => 6,
    };

    /// <summary>How many single-phase circuits of up to 20 A a row of circuits counts as.</summary>
    /// <param name="circuits">How many; 0 or more.</param>
    /// <param name="amperes">Rating of each [A]; above 0.</param>
    /// <param name="threePhase">True for three-phase circuits, which count as three.</param>
    /// <returns>The count.</returns>
    /// <remarks>Source: EN 50174-2, from memory.</remarks>
    public static int CountOf(int circuits, double amperes, bool threePhase)
    {
        Require.Above0(amperes, "A");
        return circuits * (threePhase ? 3 : 1) * (int)Math.Ceiling(amperes / CircuitAmperes - 1e-9);
    }

    /// <summary>Least distance [mm].</summary>
    /// <param name="cable">The cable's class.</param>
    /// <param name="barrier">What lies between.</param>
    /// <param name="circuits">Single-phase circuits of up to 20 A; 0 or more.</param>
    /// <returns>A = S × P [mm].</returns>
    /// <remarks>Source: EN 50174-2.</remarks>
    public static double Millimetres(SeparationClass cable, MainsBarrier barrier, int circuits) => BaseMillimetres(cable, barrier) * CircuitFactor(circuits);

    /// <summary>Most circuits that a distance is enough for.</summary>
    /// <param name="cable">The cable's class.</param>
    /// <param name="barrier">What lies between.</param>
    /// <param name="millimetres">The distance there is [mm]; 0 or more.</param>
    /// <returns>How many; null when any number.</returns>
    /// <remarks>Source: EN 50174-2, its steps read backwards.</remarks>
    public static int? MostCircuits(SeparationClass cable, MainsBarrier barrier, double millimetres)
    {
        Require.AtLeast(0, millimetres, "mm");
        var most = 0;
        foreach (var step in (ReadOnlySpan<int>)[3, 6, 9, 12, 15, 30, 45, 60, 75])
        {
            if (Millimetres(cable, barrier, step) > millimetres + 1e-9)
                return most;
            most = step;
        }

        return Millimetres(cable, barrier, int.MaxValue) > millimetres + 1e-9 ? most : null;
    }
}

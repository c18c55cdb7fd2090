namespace Headroom.Engineering.Cabling;

/// <summary>A difference of resistance that was read, and what it may be.</summary>
/// <param name="Pair">The pair; of two the one with more ohms.</param>
/// <param name="Other">The other pair; null for a difference within one.</param>
/// <param name="Ohms">The difference [Ω].</param>
/// <param name="MostOhms">What it may be [Ω].</param>
/// <param name="LoopOhms">The pair out and back, for a difference within one [Ω]; null when not known.</param>
internal sealed record PairDifference(string Pair, string? Other, double Ohms, double MostOhms, double? LoopOhms)
{
    /// <summary>Part of the allowed difference that is used [1].</summary>
    public double Used => Ohms / MostOhms;
}

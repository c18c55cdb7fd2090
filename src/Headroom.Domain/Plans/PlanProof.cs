namespace Headroom.Domain.Plans;

/// <summary>How far from the best possible a design may be, by what it was chosen for.</summary>
/// <param name="By">What it was chosen for: its cost, its number of boxes, or of how many designs it is the best.</param>
/// <param name="Gap">How far above the least possible it may lie, as a share of that least; 0 when proved; null where nothing is known of the least possible.</param>
public sealed record PlanProof(string By, double? Gap)
{
    /// <summary>True when nothing better is possible.</summary>
    public bool Proved => Gap == 0;
}

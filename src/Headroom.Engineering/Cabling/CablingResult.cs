using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Everything the study of the cables worked out, every intermediate figure by name.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Runs">The copper runs.</param>
/// <param name="Readings">The runs whose pairs were read, by drop.</param>
/// <param name="Links">Uplinks over fibre, and over copper modules with a drop.</param>
/// <param name="Pathways">Pathways that a drop takes.</param>
/// <param name="Bundles">Cables that are tied together.</param>
public sealed record CablingResult(
    BoundDesign Bound,
    IReadOnlyList<CopperRun> Runs,
    IReadOnlyDictionary<string, PairReadings> Readings,
    IReadOnlyList<FibreLink> Links,
    IReadOnlyList<PathwayUse> Pathways,
    IReadOnlyList<CableBundle> Bundles)
{
    /// <summary>How much of each cable is to be laid.</summary>
    public IReadOnlyList<CableTotal> Totals => CableTotals.Of(Bound);
}

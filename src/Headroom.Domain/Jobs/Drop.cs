using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>An outlet and the cable to it.</summary>
/// <param name="Id">The id on the label.</param>
/// <param name="From">The space where the cable starts.</param>
/// <param name="To">The space where the outlet is; null when not written.</param>
/// <param name="Pieces">The run in pieces, from the closet outwards; one piece for most.</param>
/// <param name="CordAtPanel">The cord at the closet end; null when not written.</param>
/// <param name="CordAtDevice">The cord at the outlet end; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Drop(
    string Id,
    string From,
    string? To,
    IReadOnlyList<RunPiece> Pieces,
    RunPiece? CordAtPanel,
    RunPiece? CordAtDevice,
    Place At)
{
    /// <summary>True when it lies there already, so that nothing is bought for it.</summary>
    public bool Existing { get; init; }

    /// <summary>Mated pairs of connectors along a fibre; null when not written.</summary>
    public int? MatedPairs { get; init; }

    /// <summary>Splices along a fibre; null when not written.</summary>
    public int? Splices { get; init; }
}

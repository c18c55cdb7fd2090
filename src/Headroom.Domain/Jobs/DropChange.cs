using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at a drop.</summary>
/// <param name="Id">The drop.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record DropChange(string Id, Place At)
{
    /// <summary>The cable that is laid in place of the one surveyed; null for the same.</summary>
    public string? Cable { get; init; }

    /// <summary>The run in pieces, in place of that surveyed; null for the same.</summary>
    public IReadOnlyList<RunPiece>? Pieces { get; init; }

    /// <summary>The cord at the closet end; null for the same.</summary>
    public RunPiece? CordAtPanel { get; init; }

    /// <summary>The cord at the outlet end; null for the same.</summary>
    public RunPiece? CordAtDevice { get; init; }

    /// <summary>Mated pairs of connectors along a fibre; null for as many.</summary>
    public int? MatedPairs { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public DropChange Over(DropChange other) => this with
    {
        Cable = Cable ?? (Pieces is null ? other.Cable : null),
        Pieces = Pieces ?? other.Pieces,
        CordAtPanel = CordAtPanel ?? other.CordAtPanel,
        CordAtDevice = CordAtDevice ?? other.CordAtDevice,
        MatedPairs = MatedPairs ?? other.MatedPairs,
    };

    /// <summary>The drop with the change. One that lay there already is laid anew where its cable or way is another.</summary>
    /// <param name="drop">The drop as surveyed.</param>
    /// <returns>The drop as it is then.</returns>
    public Drop In(Drop drop)
    {
        var pieces = Pieces is null ? drop.Pieces : Completed(drop);
        return drop with
        {
            Pieces = Cable is null ? pieces : [.. pieces.Select(piece => piece with { Cable = Cable })],
            CordAtPanel = CordAtPanel ?? drop.CordAtPanel,
            CordAtDevice = CordAtDevice ?? drop.CordAtDevice,
            MatedPairs = MatedPairs ?? drop.MatedPairs,
            Existing = drop.Existing && Cable is null && Pieces is null,
        };
    }

    // What a piece does not say is as in the first piece surveyed.
    private IReadOnlyList<RunPiece> Completed(Drop drop) =>
        [.. Pieces!.Select(piece => piece with { Cable = piece.Cable ?? drop.Pieces[0].Cable, Bundle = piece.Bundle ?? drop.Pieces[0].Bundle })];
}

using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.Binding;

/// <summary>What a piece of a run is made of: one for all pieces that are alike.</summary>
public sealed record PieceMake
{
    /// <summary>The name of its cable; null when not known.</summary>
    public string? Cable { get; init; }

    /// <summary>Cross-section of one conductor [mm²]; null when not known.</summary>
    public double? SquareMillimetres { get; init; }

    /// <summary>Conductivity as a share of annealed copper [1].</summary>
    public double Conductivity { get; init; } = 1;

    /// <summary>True for copper-clad conductors.</summary>
    public bool CopperClad { get; init; }

    /// <summary>True for a cord.</summary>
    public bool Cord { get; init; }

    /// <summary>The copper cable of the catalogue; null when it is not known or is fibre.</summary>
    public CableModel? Copper { get; init; }

    /// <summary>The fibre cable of the catalogue; null when it is not known or is copper.</summary>
    public FibreModel? Fibre { get; init; }
}

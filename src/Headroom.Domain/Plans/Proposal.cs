using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Domain.Plans;

/// <summary>A design that the study does not call short, with what speaks for it.</summary>
public sealed record Proposal
{
    /// <summary>What it is offered as, such as cheapest; several where one design is several.</summary>
    public required IReadOnlyList<string> Roles { get; init; }

    /// <summary>What is bought, in words.</summary>
    public required string Bought { get; init; }

    /// <summary>The design.</summary>
    public required Design Design { get; init; }

    /// <summary>Its ledger.</summary>
    public required Ledger Ledger { get; init; }

    /// <summary>What it costs.</summary>
    public required PlanCost Cost { get; init; }

    /// <summary>How far from the best possible it may be.</summary>
    public required PlanProof Proof { get; init; }

    /// <summary>How many switches, injectors and standby supplies it has.</summary>
    public required int Units { get; init; }

    /// <summary>Copper ports left free.</summary>
    public required int FreePorts { get; init; }

    /// <summary>Ports that give power, left free.</summary>
    public required int FreePowered { get; init; }

    /// <summary>Watts left for ports in the worst state, reserve included [W]; null when not known.</summary>
    public required double? FreeWatts { get; init; }

    /// <summary>The equipment alone at the ear that hears it most [dB(A)]; null when nobody listens or it is not known.</summary>
    public required double? Loudest { get; init; }

    /// <summary>Cords that would be moved against the design of today; null when there is none.</summary>
    public required int? Moved { get; init; }

    /// <summary>How each switch is set, and what another setting would do.</summary>
    public IReadOnlyList<string> Settings { get; init; } = [];

    /// <summary>The limits with the least left, by the id of their entries.</summary>
    public IReadOnlyList<string> Binding { get; init; } = [];
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>A switch that can be bought, with one of its supplies.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Model">Its model.</param>
/// <param name="Supply">The supply; null when it has none.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Owned">True when the client has it already.</param>
/// <param name="Places">The places where it may stand, by number.</param>
internal sealed record Purchase(string Name, SwitchModel Model, SupplyModel? Supply, PlanCost Cost, bool Owned, IReadOnlyList<int> Places)
{
    /// <summary>Midspans beside it that give its ports power; null for none.</summary>
    public Midspans? Midspans { get; init; }

    /// <summary>What is heard of it alone at each listener, by place [dB(A)].</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, double>> Heard { get; init; } = [];
}

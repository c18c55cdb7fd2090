using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Reliability;

/// <summary>What the study of the fleet worked out.</summary>
/// <param name="Policy">The house rules.</param>
public sealed record ReliabilityResult(Policy Policy)
{
    /// <summary>The models of the fleet.</summary>
    internal IReadOnlyList<FleetRate> Rates { get; init; } = [];
}

using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>Everything the study of outages worked out, every intermediate figure by name.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Supplies">The standby supplies.</param>
/// <param name="Kept">What the policy wants to go on working, name by name.</param>
/// <param name="Restart">The mains coming back.</param>
public sealed record StandbyResult(BoundDesign Bound, IReadOnlyList<StandbySupply> Supplies, IReadOnlyList<KeptService> Kept, RestartResult Restart);

using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Everything the study of racks worked out.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Racks">The racks in which something is.</param>
/// <param name="Things">Everything that stands somewhere.</param>
/// <param name="Stacks">What is stacked on something.</param>
/// <param name="MainsWatts">What a unit takes from the mains at its most [W]; null when not known.</param>
public sealed record RackingResult(
    BoundDesign Bound, IReadOnlyList<RackUse> Racks, IReadOnlyList<RackThing> Things, IReadOnlyList<Stacked> Stacks, Func<string, double?> MainsWatts);

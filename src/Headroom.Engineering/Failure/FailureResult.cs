using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>What the study of failures can tell; each part is worked out when somebody first asks, for most jobs set no limit.</summary>
/// <param name="bound">The design.</param>
public sealed class FailureResult(BoundDesign bound)
{
    /// <summary>The design.</summary>
    public BoundDesign Bound => bound;

    /// <summary>The effect of every single failure.</summary>
    public IReadOnlyList<FailureEffect> Effects => field ??= [.. new FailureFinder(bound).All()];

    /// <summary>The parts that endpoints hang on.</summary>
    internal WayParts Ways => field ??= new WayParts(bound);
}

using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What is wanted of an outage of the mains.</summary>
/// <param name="Runtime">How long standby supplies must hold, where the design says nothing else [s]; null when not written.</param>
/// <param name="Keep">What must go on working: kinds of endpoint, or ids of endpoints and switches; empty when not written.</param>
/// <param name="BackWithin">How soon after the mains is back these must work again [s]; null when not written.</param>
public sealed record OutagePolicy(Given<Seconds>? Runtime, IReadOnlyList<string> Keep, Given<Seconds>? BackWithin)
{
    /// <summary>Nothing is wanted.</summary>
    public static OutagePolicy None { get; } = new(null, [], null);
}

using Headroom.Domain.Jobs;
using Headroom.Planning.Packing;

namespace Headroom.Planning;

/// <summary>What is to be planned.</summary>
/// <param name="On">The day for which it is worked out.</param>
public sealed record PlanRequest(DateOnly On)
{
    /// <summary>What must be so.</summary>
    public PlanPins Pins { get; init; } = PlanPins.None;

    /// <summary>How hard to look.</summary>
    public PackEffort Effort { get; init; } = PackEffort.Usual;

    /// <summary>The design of today; null for the one the job has chosen, else its first.</summary>
    public string? Today { get; init; }

    /// <summary>Watts that the firm read at this and other sites; empty when none are at hand.</summary>
    public IReadOnlyList<FirmReading> FirmReadings { get; init; } = [];

    /// <summary>True to look for the cheapest design only.</summary>
    public bool OnlyCheapest { get; init; }
}

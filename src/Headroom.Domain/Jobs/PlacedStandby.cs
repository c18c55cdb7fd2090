using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A standby supply of a design.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Model">The model; null where the design it is like says it.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="BatteryAge">How old its batteries are [s]; null when not known.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record PlacedStandby(string Id, string? Model, Standing Standing, Given<Seconds>? BatteryAge, Place At)
{
    /// <summary>How long it must hold [s]; null where the policy says it, or nobody does.</summary>
    public Given<Seconds>? Wanted { get; init; }

    /// <summary>What else hangs on it, such as the box of the line; null when not said.</summary>
    public IReadOnlyList<AlsoFed>? Also { get; init; }

    /// <summary>When ports are switched off to spare it, the first stage first; null when not said.</summary>
    public IReadOnlyList<ShedStage>? Sheds { get; init; }
}

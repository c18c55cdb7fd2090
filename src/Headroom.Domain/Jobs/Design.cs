using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>One answer to the job. As written it may say only what differs from another; <see cref="DesignLineage"/> fills in the rest.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Like">The design it starts from; null when it stands alone.</param>
/// <param name="Switches">The switches, by id.</param>
/// <param name="Injectors">Injectors and midspans, by id.</param>
/// <param name="Standby">Standby supplies, by id.</param>
/// <param name="Uplinks">Links between switches and to the line; null when the design does not say.</param>
/// <param name="Patch">What is patched where.</param>
/// <param name="Removed">What of the other design is taken away: ids of units, drops or endpoints, and <c>uplinks</c>.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Design(
    string Id,
    string? Like,
    IReadOnlyList<PlacedSwitch> Switches,
    IReadOnlyList<PlacedInjector> Injectors,
    IReadOnlyList<PlacedStandby> Standby,
    IReadOnlyList<Uplink>? Uplinks,
    IReadOnlyList<Patch> Patch,
    IReadOnlyList<string> Removed,
    Place At)
{
    /// <summary>Panels, shelves, outlets and the like that are bought for it, by id.</summary>
    public IReadOnlyList<Fitting> Fittings { get; init; } = [];

    /// <summary>What of the building it changes; null for nothing.</summary>
    public BuildingChange? Building { get; init; }
}

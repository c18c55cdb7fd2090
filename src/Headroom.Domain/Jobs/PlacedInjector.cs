using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>An injector or midspan of a design: it adds watts to a data cable.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Model">The model; null where the design it is like says it.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="FedBy">The standby supply that feeds it; null when the mains does or it is not said.</param>
/// <param name="From">The switch ports that its data side comes from, in the order of its own ports; empty when not said.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record PlacedInjector(
    string Id,
    string? Model,
    Standing Standing,
    string? FedBy,
    IReadOnlyList<PortRef> From,
    Place At);

using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>A switch of a design.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Model">The model; null where the design it is like says it.</param>
/// <param name="Supply">Which of the model's supplies is fitted; null for the model's first.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="FedBy">The standby supply that feeds it; null when the mains does or it is not said.</param>
/// <param name="Level">The fan level it runs at; null when not said.</param>
/// <param name="Setting">How it hands out watts, where that differs from the model's way.</param>
/// <param name="PassivePorts">The ports on which passive voltage is switched on; null when not said.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record PlacedSwitch(
    string Id,
    string? Model,
    string? Supply,
    Standing Standing,
    string? FedBy,
    int? Level,
    PowerSetting Setting,
    IReadOnlyList<int>? PassivePorts,
    Place At)
{
    /// <summary>The fan model put in place of the maker's; null when nothing was changed.</summary>
    public string? Fan { get; init; }

    /// <summary>What was changed in the way of its air; null when nothing was.</summary>
    public AirwayChange? Air { get; init; }
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A switch model.</summary>
/// <param name="Body">Size, weight, ratings, price.</param>
/// <param name="Ports">Its ports in groups alike.</param>
/// <param name="Supplies">The supplies it can have; the first is the usual one.</param>
/// <param name="BaseWatts">What it draws itself, behind its supply, without powered ports [W]; null when not known.</param>
/// <param name="PathEfficiency">Share of the port watts that reaches the ports, behind the supply; null when not known.</param>
/// <param name="Setting">How it hands out watts.</param>
/// <param name="SettingsOffered">The ways of reserving it can be set to.</param>
/// <param name="Sound">What is heard of it; null when not known, also when it has no fan.</param>
/// <param name="Switching">Switching capacity [bit/s]; null when not known.</param>
/// <param name="Forwarding">Forwarding rate [frames/s]; null when not known.</param>
public sealed record SwitchModel(
    Body Body,
    IReadOnlyList<PortGroup> Ports,
    IReadOnlyList<SupplyModel> Supplies,
    Given<Watts>? BaseWatts,
    Given<Share>? PathEfficiency,
    PowerSetting Setting,
    IReadOnlyList<ReservesBy> SettingsOffered,
    SoundModel? Sound,
    Given<BitsPerSecond>? Switching,
    Given<PacketsPerSecond>? Forwarding)
{
    /// <summary>How long it takes from power to the first port served [s]; null when not known.</summary>
    public Given<Seconds>? Boot { get; init; }

    /// <summary>The invented name.</summary>
    public string Id => Body.Id;

    /// <summary>The fan model that its maker fits; null when not known or without fans.</summary>
    public string? Fan { get; init; }
}

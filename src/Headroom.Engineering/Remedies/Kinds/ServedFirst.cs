using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A high priority for what must go on working, or for the device that stays dark.</summary>
internal sealed class ServedFirst : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry))
            yield break;
        foreach (var group in at.EndpointsOf(entry).Where(endpoint => endpoint is { TakesPower: true, Port.Switch: not null }).GroupBy(endpoint => endpoint.Port!.Switch!.Id))
        {
            var ids = group.Select(endpoint => endpoint.Id).ToList();
            yield return new("priority", $"{group.Key}: high priority for {Words.List(ids, most: 12)}", Delta.Switch(at, Of(group.Key, ids))) { BuysNothing = true, Minutes = Entries.Setting };
        }
    }

    /// <summary>A switch that serves some devices first.</summary>
    public static PlacedSwitch Of(string id, IEnumerable<string> first) =>
        Delta.Switch(id) with { Setting = PowerSetting.Silent with { EndpointPriorities = first.ToDictionary(one => one, _ => Priority.High) } };
}

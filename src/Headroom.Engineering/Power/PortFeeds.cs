using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Says what a port puts on the cable.</summary>
internal static class PortFeeds
{
    /// <summary>What the port of a patch puts on the cable.</summary>
    public static PortFeed Of(BoundPatch patch) => patch.Switch is { } s ? OfSwitch(s, patch.Port) : OfInjector(patch.Injector!);

    private static PortFeed OfSwitch(BoundSwitch s, int port)
    {
        var limit = s.Setting.PortLimits.GetValueOrDefault(port);
        var group = s.PortGroupOf(port);
        if (group is null)
            return PortFeed.None;
        if (s.PassiveOn(port))
            return Passive(group.Passive!) with { LimitWatts = limit?.Value.Value, LimitOrigin = Origins.Of(limit) };
        return group.Poe is { } type
            ? Typed(type, s.Supply) with { LimitWatts = limit?.Value.Value, LimitOrigin = Origins.Of(limit) }
            : PortFeed.None;
    }

    private static PortFeed OfInjector(BoundInjector injector) =>
        injector.Model.Passive is { } passive ? Passive(passive)
        : injector.Model.Poe is { } type ? Typed(type, injector.Model.Supply)
        : PortFeed.None;

    private static PortFeed Passive(PassiveOutput passive) => new(
        null, passive, passive.Volts.Value.Value, passive.Volts.PlusMinus ?? 0, Origins.Of(passive.Volts), null, "");

    private static PortFeed Typed(PoeType type, SupplyModel? supply) => new(
        type,
        null,
        supply?.PortVolts?.Value.Value,
        supply?.PortVolts?.PlusMinus ?? 0,
        supply?.PortVolts is { } volts ? Origins.Of(volts) : "standard, the least of its type",
        null,
        "");
}

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
        var feed = s.PassiveOn(port) ? Passive(group.Passive!) : group.Poe is { } type ? Typed(type, s.Supply) : PortFeed.None;
        return limit is null || feed == PortFeed.None ? feed : feed with { Limit = limit };
    }

    private static PortFeed OfInjector(BoundInjector injector) =>
        injector.Model.Passive is { } passive ? Passive(passive)
        : injector.Model.Poe is { } type ? Typed(type, injector.Model.Supply)
        : PortFeed.None;

    private static PortFeed Passive(PassiveOutput passive) => new(null, passive, passive.Volts, null);

    private static PortFeed Typed(PoeType type, SupplyModel? supply) => new(type, null, supply?.PortVolts, null);
}

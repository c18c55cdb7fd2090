using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Depth of each thing with its plugs, and room in front for cords.</summary>
internal static class DepthEntries
{
    /// <summary>Adds the entries of one rack.</summary>
    public static void Add(List<LedgerEntry> entries, RackUse use, Policy policy)
    {
        var reserve = policy.ReserveOf("depth");
        foreach (var thing in use.Things)
        {
            if (thing.Depth is not null || thing.Fitting is null)
                entries.Add(Depth(use, thing, reserve));
        }

        if (use.Rack.Front is { } front)
            entries.Add(Front(use, 1000 * front.Value.Value, policy.ReserveOf("clearance")));
    }

    private static LedgerEntry Depth(RackUse use, RackThing thing, Reserve reserve)
    {
        var (depth, there) = (1000 * thing.Depth?.Value.Value, 1000 * use.Depth?.Value.Value);
        var plugs = use.Rack.PlugsBehind is { } written ? 1000 * written.Value.Value : RackCords.UsualPlugsBehindMillimetres;
        var entry = RackDraft.Of(thing.Id, "depth", ("depth with plugs", "mm"), "depth").With(
            depth + plugs,
            there,
            reserve,
            new LateStory(
                e => $"{thing.Id} is {Words.Of(depth ?? 0)} mm deep and needs {Words.Of(plugs)} mm for plugs behind it; {use.Rack.Id} is {Words.Of(e.Limit!.Value)} mm deep.",
                e => new Working(
                    "depth of the unit + plugs and bends behind it",
                    [
                        new($"depth of {thing.Id}", depth, "mm", Origins.Of(thing.Depth)),
                        new("plugs behind", plugs, "mm", use.Rack.PlugsBehind is null ? "assumed, common practice, no source" : Origins.Of(use.Rack.PlugsBehind)),
                        new($"usable depth of {use.Rack.Id}", there, "mm", Origins.Of(use.Depth)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("needed", $"{Words.Of(depth ?? 0)} + {Words.Of(plugs)}", e.Demand, "mm")],
                    "a sum of lengths; usable depth is from the front rails to what is behind"),
                e =>
                [
                    new("depth of the unit", "mm", depth, e.Limit - plugs, e.Limit - plugs - e.Reserve),
                    new("plugs behind", "mm", plugs, e.Limit - depth, e.Limit - depth - e.Reserve),
                ]));
        return entry with
        {
            Question = there is null ? $"how deep is rack {use.Rack.Id} behind its front rails? measure to the wall or rear panel"
                : depth is null ? $"how deep is {thing.Id}? measure it without plugs" : null,
            Assumed = use.Rack.PlugsBehind is null ? [$"{Words.Of(plugs)} mm for plugs behind, since 'plugs behind' of {use.Rack.Id} is not written"] : [],
            Advice = entry.Studied is Verdict.Short ? ["plugs with an angle at the back", $"or a deeper rack than {use.Rack.Id}", "or a shallower model"] : [],
        };
    }

    private static LedgerEntry Front(RackUse use, double there, Reserve reserve)
    {
        var needed = RackCords.FrontMillimetres(RackCords.UsualCordMillimetres);
        var entry = RackDraft.Of(use.Rack.Id, "front", ("room before rails", "mm"), "clearance").With(
            needed,
            there,
            reserve,
            new LateStory(
                e => $"Plugs and the bends of their cords need {Words.Of(needed)} mm before the rails of {use.Rack.Id}; its door leaves {Words.Of(there)} mm.",
                e => new Working(
                    "a plug with its boot + one bend of four diameters",
                    [
                        new("plug with its boot", RackCords.PlugMillimetres, "mm", "common practice, no source"),
                        new("thickness of a cord", RackCords.UsualCordMillimetres, "mm", "common practice, no source"),
                        new("room before the rails", there, "mm", Origins.Of(use.Rack.Front)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("needed", $"{Words.Of(RackCords.PlugMillimetres)} + 4 · {Words.Of(RackCords.UsualCordMillimetres)}", needed, "mm")],
                    "bend of TIA-568.0, from memory"),
                e => [new("thickness of the cords", "mm", RackCords.UsualCordMillimetres, (there - RackCords.PlugMillimetres) / 4, (there - RackCords.PlugMillimetres - e.Reserve) / 4)]));
        return entry with
        {
            Sense = Sense.AtLeast,
            Assumed = ["cords of 6 mm with straight boots"],
            Advice = entry.Studied == Verdict.Short ? ["thin cords with short boots", $"or set the rails of {use.Rack.Id} back, where it is deep enough"] : [],
        };
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Uplinks name what exists and run in no ring.</summary>
internal static class UplinkRules
{
    /// <summary>Checks the links of a whole design.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        foreach (var link in view.Uplinks)
        {
            if (link.Drop is { } drop && !names.Drops.ContainsKey(drop))
                slips.Unknown(RuleCodes.UnknownDrop, link.At, new("drop", drop, $"the uplink from {link.From}"), names.Drops.Keys);
            Module(link.Module, link, names, slips);
            Module(link.FarModule, link, names, slips);
        }

        Rings(view, slips);
    }

    private static void Module(string? module, Uplink link, JobNames names, Slips slips)
    {
        if (module is null || names.Catalogue.Modules.ContainsKey(module))
            return;
        var missing = new Missing("module model", module, $"the uplink from {link.From}", "of the catalogue");
        slips.Unknown(RuleCodes.UnknownModule, link.At, missing, names.Catalogue.Modules.Keys);
    }

    // Grows a tree of switches link by link; a link between two switches that the tree already joins closes a ring.
    // Several links between the same two switches are one: they are bundled.
    private static void Rings(DesignView view, Slips slips)
    {
        var joined = new Dictionary<string, List<string>>();
        var bundles = new HashSet<(string, string)>();
        var heads = new Dictionary<string, string>();
        foreach (var link in view.Uplinks)
        {
            var (from, to) = (link.From.Unit, link.To.Unit);
            if (!view.Switches.ContainsKey(from) || !view.Switches.ContainsKey(to))
                continue;
            if (!bundles.Add(string.CompareOrdinal(from, to) < 0 ? (from, to) : (to, from)))
                continue;
            if (Head(from, heads) == Head(to, heads))
            {
                slips.Add(RuleCodes.UplinkRing, link.At, Ring(from, Way(to, from, joined)));
                continue;
            }

            heads[Head(from, heads)] = Head(to, heads);
            Join(from, to, joined);
        }
    }

    // The switch that stands for all those joined with this one; the way there is halved as it is walked.
    private static string Head(string id, Dictionary<string, string> heads)
    {
        while (heads.TryGetValue(id, out var next))
        {
            if (heads.TryGetValue(next, out var further))
                heads[id] = further;
            id = next;
        }

        return id;
    }

    private static void Join(string from, string to, Dictionary<string, List<string>> joined)
    {
        foreach (var (one, other) in new[] { (from, to), (to, from) })
        {
            if (!joined.TryGetValue(one, out var others))
                joined[one] = others = [];
            others.Add(other);
        }
    }

    private static List<string> Way(string from, string to, Dictionary<string, List<string>> joined)
    {
        var cameFrom = new Dictionary<string, string?> { [from] = null };
        var open = new Queue<string>([from]);
        while (!cameFrom.ContainsKey(to) && open.TryDequeue(out var here))
        {
            foreach (var next in joined.GetValueOrDefault(here) ?? [])
            {
                if (cameFrom.TryAdd(next, here))
                    open.Enqueue(next);
            }
        }

        return Back(to, cameFrom);
    }

    private static List<string> Back(string end, Dictionary<string, string?> cameFrom)
    {
        var way = new List<string>();
        for (var here = (string?)end; here is not null; here = cameFrom[here])
            way.Add(here);
        way.Reverse();
        return way;
    }

    private static Said Ring(string from, List<string> back) => new(
        $"the uplinks run in a ring: {string.Join(" -> ", back.Prepend(from))}",
        "the switches of a design form a tree, with the line at its root",
        "Take one of these links out.");
}

using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What is patched exists and is patched once.</summary>
internal static class PatchRules
{
    /// <summary>Checks the patch of a whole design, and that it writes nothing twice itself.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        foreach (var patch in view.Whole.Patch)
            What(patch, names, slips);
        if (names.Designs.TryGetValue(view.Whole.Id, out var written))
            Twice(written.Patch, [], slips);
        Twice(view.Whole.Patch, view.Uplinks, slips);
    }

    private static void What(Patch patch, JobNames names, Slips slips)
    {
        var isDrop = names.Drops.ContainsKey(patch.What);
        var endpoint = names.Endpoints.GetValueOrDefault(patch.What);
        if (!isDrop && endpoint is null)
            slips.Unknown(RuleCodes.UnknownPatched, patch.At, new("drop or endpoint", patch.What, $"the patch to {patch.To}"), names.Patchable);
        else if (isDrop && endpoint is not null && endpoint.Drop != patch.What)
            slips.Add(RuleCodes.AmbiguousPatch, patch.At, Ambiguous(patch.What), patch.What);
        else if (!isDrop && endpoint?.Drop is { } drop)
            slips.Add(RuleCodes.PatchedBesideDrop, patch.At, BesideDrop(patch, drop), patch.What);
    }

    private static Said Ambiguous(string id) => new(
        $"'{id}' is patched, and both a drop and an endpoint have this id",
        "a patch names one of them; they may share an id only where the endpoint hangs on that drop",
        $"Rename one of the two, or write 'drop: {id}' at the endpoint.");

    private static Said BesideDrop(Patch patch, string drop) => new(
        $"endpoint {patch.What} is patched to {patch.To} by its own id, but hangs on drop {drop}",
        "only an endpoint without a drop is patched by its own id",
        $"Patch the drop: '{drop}: {patch.To}', or take the drop out of the endpoint.");

    private static void Twice(IReadOnlyList<Patch> patches, IReadOnlyList<Uplink> uplinks, Slips slips)
    {
        var first = new Dictionary<string, string>();
        foreach (var patch in patches)
            Once(first, patch.What, patch.To.ToString(), patch.At);
        foreach (var link in uplinks)
        {
            if (link.Drop is { } drop)
                Once(first, drop, $"the uplink {link.From} to {link.To}", link.At);
        }

        void Once(Dictionary<string, string> first, string what, string to, Place at)
        {
            if (!first.TryAdd(what, to))
                slips.Add(RuleCodes.DropTwice, at, new($"'{what}' is patched to {first[what]} and to {to}", "a drop or endpoint is patched once", "Take one of the two out."), what);
        }
    }
}

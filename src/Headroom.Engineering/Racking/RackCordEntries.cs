using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Cords between panels and switches of one rack: long enough, and not more than the managers take.</summary>
internal static class RackCordEntries
{
    /// <summary>Adds the entries of one rack.</summary>
    public static void Add(List<LedgerEntry> entries, RackUse use, RackingResult result)
    {
        var panels = use.Places.Where(place => place.Thing.Kind == "panel" && place.Lowest is not null).ToList();
        var policy = result.Bound.Job.Policy;
        foreach (var place in use.Places)
        {
            if (panels.Count > 0 && place is { Lowest: not null, Thing.Kind: "switch" } && Shortest(place.Thing.Id, result.Bound) is { } cord)
                entries.Add(Reach(place, panels, cord, policy.ReserveOf("clearance")));
        }

        var managers = use.FittingsOf("manager").ToList();
        if (managers.Count > 0)
            entries.Add(Managers(use, managers, result.Bound, policy.ReserveOf("fill")));
    }

    private static (string Drop, Given<Metres> Length)? Shortest(string unit, BoundDesign bound)
    {
        (string Drop, Given<Metres> Length)? shortest = null;
        foreach (var endpoint in bound.Endpoints)
        {
            if (endpoint.Port?.Unit == unit && endpoint.Run?.Drop is { CordAtPanel.Length: { } length } drop && (shortest is null || length.Value.Value < shortest.Value.Length.Value.Value))
                shortest = (drop.Id, length);
        }

        return shortest;
    }

    private static LedgerEntry Reach(RackPlace place, List<RackPlace> panels, (string Drop, Given<Metres> Length) cord, Reserve reserve)
    {
        var farthest = panels.MaxBy(panel => Math.Abs(Middle(panel) - Middle(place)))!;
        var apart = Math.Abs(Middle(farthest) - Middle(place));
        var needed = RackCords.NeededMetres(apart);
        var there = cord.Length.Value.Value;
        var entry = RackDraft.Of(place.Thing.Id, "cords", ("cord to the panel", "mm"), "clearance").With(
            1000 * needed,
            1000 * there,
            reserve,
            new LateStory(
                e => $"From {place.Thing.Id} to {farthest.Thing.Id} a cord needs {Words.Of(needed)} m along the rails; the shortest written is {Words.Of(there)} m, at {cord.Drop}.",
                e => new Working(
                    "half a panel's width to the side at both ends + the height between + slack",
                    [
                        new($"from the middle of {place.Thing.Id} to that of {farthest.Thing.Id}", apart, "U", place.IsProposed || farthest.IsProposed ? "places proposed" : "places written"),
                        new("width of a panel", RackHeight.PanelWidthMillimetres, "mm", "IEC 60297, from memory"),
                        new("slack at each end", 1000 * RackCords.SlackMetres, "mm", "common practice, no source"),
                        new($"cord at the panel of {cord.Drop}", there, "m", Origins.Of(cord.Length)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("needed", $"{Words.Of(RackHeight.PanelWidthMillimetres)} mm + {Words.Of(apart)} · {Words.Of(RackHeight.UnitMillimetres)} mm + 2 · {Words.Of(1000 * RackCords.SlackMetres)} mm", needed, "m")],
                    "a sum of lengths; a cord straight across may be shorter"),
                e => [new("cord at the panel", "mm", 1000 * there, 1000 * needed, e.Reserve + 1000 * needed, UpTo: false)]));
        return entry with
        {
            Sense = Sense.AtLeast,
            Advice = entry.Studied == Verdict.Short ? [$"a longer cord at {cord.Drop}", $"or {place.Thing.Id} nearer to {farthest.Thing.Id}"] : [],
        };
    }

    private static LedgerEntry Managers(RackUse use, List<Fitting> managers, BoundDesign bound, Reserve reserve)
    {
        var units = use.Things.Select(thing => thing.Id).ToHashSet();
        var cords = bound.Design.Patch.Count(patch => units.Contains(patch.To.Unit));
        var takes = managers.Sum(manager => manager.Places ?? RackCords.CordsOfAManager * Math.Max(1, (int)Math.Ceiling(manager.Height?.Value.Value ?? 1)));
        var entry = RackDraft.Of(use.Rack.Id, "managers", ("cords in managers", "cords"), "fill").With(
            cords,
            takes,
            reserve,
            new LateStory(
                e => $"{Words.Count(cords, "cord")} of {use.Rack.Id} {(cords == 1 ? "runs" : "run")} through managers that take {takes}.",
                e => new Working(
                    "one for each patched port in the rack",
                    [
                        .. managers.Select(manager => new WorkingInput($"{manager.Id} takes", manager.Places, "cords", manager.Places is null ? $"not written: {RackCords.CordsOfAManager} a unit, common practice, no source" : manager.At.ToString())),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("cords", "counted from the patch", cords, "cords"), new("places", "the sum", takes, "cords")],
                    "counted"),
                e => [new("cords", "cords", cords, takes, takes - e.Reserve)]));
        return entry with
        {
            Assumed = managers.TrueForAll(manager => manager.Places is not null) ? [] : [$"{RackCords.CordsOfAManager} cords for each unit of a manager whose 'places' are not written"],
            Advice = entry.Studied == Verdict.Short ? [$"another manager in {use.Rack.Id}", "or thinner cords"] : [],
        };
    }

    private static double Middle(RackPlace place) => place.Lowest!.Value + (place.Thing.Fills - 1) / 2.0;
}

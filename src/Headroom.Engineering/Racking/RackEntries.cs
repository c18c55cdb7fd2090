using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Rack units, places for what has none yet, and width on shelves.</summary>
internal static class RackEntries
{
    private const string Source = "EIA/ECA-310-E, IEC 60297: one unit is 44.45 mm";

    /// <summary>Adds the entries of one rack.</summary>
    public static void Add(List<LedgerEntry> entries, RackUse use, Policy policy)
    {
        entries.Add(Units(use, policy.ReserveOf("rack")));
        if (use.Height is not null && use.Places.Any(place => place.IsProposed))
            entries.Add(Places(use));
        if (use.Loose.Count > 0)
            entries.Add(Shelves(use, policy.ReserveOf("clearance")));
    }

    private static LedgerEntry Units(RackUse use, Reserve reserve)
    {
        var id = use.Rack.Id;
        var entry = RackDraft.Of(id, "units", ("rack units filled", "U"), "rack").With(
            use.Filled,
            use.Height?.Value.Value,
            reserve,
            new LateStory(
                e => $"{Words.Count(use.Places.Count, "thing")} in {id} {(use.Places.Count == 1 ? "fills" : "fill")} {Words.Of(e.Demand!.Value)} of {Words.Of(e.Limit!.Value)} rack units.",
                e => new Working(
                    "Σ units, each thing rounded up to whole ones",
                    [
                        .. use.Places.Select(place => new WorkingInput($"{place.Thing.Id}, {place.Thing.Kind}", place.Thing.Fills, "U", Where(place))),
                        new("height of the rack", use.Height?.Value.Value, "U", Origins.Of(use.Height)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("filled", "the sum", use.Filled, "U"), new("mounting height left", $"{Words.Of(e.Left ?? 0)} · {Words.Of(RackHeight.UnitMillimetres)} mm", RackHeight.UnitMillimetres * e.Left, "mm")],
                    Source),
                e => [new("height of the rack", "U", e.Limit, e.Demand, HeightWithReserve(e, reserve), UpTo: false)]));
        return entry with
        {
            Question = use.Height is null ? $"how high is rack {id}? count the units between the rails, three holes each" : null,
            Advice = entry.Studied == Verdict.Short ? [$"a higher rack than {id}, or another beside it"]
                : entry.Studied == Verdict.Tight ? [$"take what is not needed out of {id}, or put a shelf's things elsewhere"] : [],
        };
    }

    private static double? HeightWithReserve(LedgerEntry entry, Reserve reserve) =>
        reserve.Amount is { } amount ? entry.Demand + amount : Math.Ceiling(entry.Demand!.Value / (1 - (reserve.Share ?? 0)) - 1e-9);

    private static string Where(RackPlace place) =>
        place.Thing.Fills == 0 ? "takes no unit"
        : place.Lowest is not { } lowest ? "no place found"
        : $"{(place.Thing.Fills == 1 ? $"at {lowest}" : $"at {lowest} to {place.Highest}")}{(place.IsProposed ? ", proposed" : "")}";

    private static LedgerEntry Places(RackUse use)
    {
        var proposed = use.Places.Where(place => place.IsProposed).ToList();
        var (wanted, found) = (proposed.Sum(place => place.Thing.Fills), proposed.Where(place => place.Lowest is not null).Sum(place => place.Thing.Fills));
        var entry = RackDraft.Of(use.Rack.Id, "place", ("units to be placed", "U"), "rack").With(
            wanted,
            found,
            Reserve.Nothing,
            new LateStory(
                e => e.Left < 0 ? $"No place is left in {use.Rack.Id} for {Words.List([.. proposed.Where(place => place.Lowest is null).Select(place => place.Thing.Id)])}: what is free does not lie together."
                    : $"Everything finds a place in {use.Rack.Id}: {Proposal(use)}.",
                _ => new Working(
                    "a place for each, the highest first, going back where one does not fit",
                    [.. use.Places.Select(place => new WorkingInput(place.Thing.Id, place.Thing.Fills, "U", Where(place)))],
                    [new("units that look for a place", "the sum", wanted, "U"), new("units that found one", "searched", found, "U")],
                    "search; heavy things from the bottom, what is plugged by hand from the top")));
        return entry with
        {
            Sense = Sense.AtLeast,
            Advice = entry.Studied == Verdict.Short ? [$"move what is in {use.Rack.Id} together, so that what is free lies in one piece"] : [Proposal(use)],
        };
    }

    /// <summary>The proposed places in words.</summary>
    internal static string Proposal(RackUse use) => string.Join(", ", use.Places.Where(place => place is { IsProposed: true, Lowest: not null }).Select(place => $"{place.Thing.Id} at {place.Lowest}"));

    private static LedgerEntry Shelves(RackUse use, Reserve reserve)
    {
        var shelves = use.FittingsOf("shelf").Count();
        var unknown = use.Loose.Where(thing => thing.Width is null).ToList();
        var known = 1000 * use.Loose.Sum(thing => thing.Width?.Value.Value ?? 0);
        var entry = RackDraft.Of(use.Rack.Id, "shelves", ("width on the shelves", "mm"), "clearance").With(
            known,
            shelves * RackHeight.OpeningMillimetres,
            reserve,
            new LateStory(
                _ => shelves == 0 ? $"{Words.List([.. use.Loose.Select(thing => thing.Id)])} cannot be screwed to the rails of {use.Rack.Id}, and it has no shelf."
                    : $"{Words.Count(use.Loose.Count, "thing")} without ears {(use.Loose.Count == 1 ? "takes" : "take")} {Words.Of(known)} mm of {Words.Count(shelves, "shelf").Replace("shelfs", "shelves", StringComparison.Ordinal)}.",
                e => new Working(
                    "Σ widths side by side, against the clear opening of each shelf",
                    [.. use.Loose.Select(thing => new WorkingInput($"width of {thing.Id}", 1000 * thing.Width?.Value.Value, "mm", Origins.Of(thing.Width))), new("shelves", shelves, "", "as written"), LateStory.ReserveInput(e, reserve)],
                    [new("widths together", "the sum", known, "mm"), new("width there is", $"{shelves} · {Words.Of(RackHeight.OpeningMillimetres)}", e.Limit, "mm")],
                    "clear opening of IEC 60297, from memory")),
            unknown.Count == 0 ? null : new KnownParts(use.Loose.Count - unknown.Count, use.Loose.Count));
        return entry with
        {
            Question = entry.Studied == Verdict.Unknown ? $"how wide is {unknown[0].Id}? measure it" : null,
            Advice = entry.Studied == Verdict.Short ? [$"a shelf in {use.Rack.Id}", "or fasten small things to the wall beside it"] : [],
        };
    }
}

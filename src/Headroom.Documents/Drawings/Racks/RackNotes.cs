using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Racking;

namespace Headroom.Documents.Drawings.Racks;

/// <summary>What is said in words beside a rack.</summary>
internal static class RackNotes
{
    /// <summary>The notes, from the top; those without a place last.</summary>
    public static IReadOnlyList<RackNote> Of(PaperInput input, RackUse use)
    {
        var notes = use.Places.OrderByDescending(place => place.Lowest ?? 0)
            .Select(place => place.Lowest is { } lowest
                ? new RackNote(lowest - 1 + place.Thing.Fills / 2.0, $"U{lowest}", Told(input, place.Thing) + (place.IsProposed ? ", place proposed" : ""))
                : new RackNote(null, "", place.Thing.Fills > 0 ? $"Without a place: {Told(input, place.Thing)}, {place.Thing.Fills} U" : $"Not on the rails: {Told(input, place.Thing)}"))
            .ToList();
        notes.AddRange(use.Loose.Select(thing => new RackNote(null, "", $"Not on the rails: {Told(input, thing)}")));
        if (use.Depth is null)
            notes.Add(new(null, "", $"No side view: the usable depth of {use.Rack.Id} is not known."));
        return notes;
    }

    /// <summary>The heat a thing leaves in an ordinary hour [W]; null when not known or none.</summary>
    public static double? HeatOf(PaperInput input, string id) => input.Results.Power.Switches.FirstOrDefault(one => one.Switch.Id == id)?.Supply.Typical?.HeatWatts;

    /// <summary>The ledger's entry of its depth; null when there is none.</summary>
    public static LedgerEntry? DepthOf(PaperInput input, string id) => input.Ledger.Entries.FirstOrDefault(entry => entry.Subject == id && entry.Quantity == "depth");

    private static string Told(PaperInput input, RackThing thing)
    {
        var parts = new List<string> { thing.Id };
        if ((thing.Body?.Id ?? thing.Kind) is var kind && kind != thing.Id)
            parts.Add(kind);
        if (thing.Depth is { } depth)
            parts.Add(Dimension.OfThing(depth.Value.Value, input.Units) + " deep");
        if (thing.Weight is { } weight)
            parts.Add(Written.InUnits(input, weight.Value.Value, "kg"));
        if (HeatOf(input, thing.Id) is { } heat)
            parts.Add($"leaves {Numbers.Show(Math.Round(heat), "W")}");
        if (thing.Body?.Ears == "loose")
            parts.Add("loose ears");
        if (DepthOf(input, thing.Id) is { Verdict: Verdict.Short or Verdict.Tight } entry)
            parts.Add($"depth {LedgerInWords.Word(entry.Verdict)}");
        return string.Join(", ", parts);
    }
}

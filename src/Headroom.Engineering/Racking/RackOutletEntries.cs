using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Mains outlets in a rack, and the current of its strips.</summary>
internal static class RackOutletEntries
{
    /// <summary>Adds the entries of one rack.</summary>
    public static void Add(List<LedgerEntry> entries, RackUse use, RackingResult result)
    {
        var strips = use.FittingsOf("outlets").ToList();
        var policy = result.Bound.Job.Policy;
        if (use.Rack.Outlets is not null || strips.Exists(strip => strip.Places is not null))
            entries.Add(Outlets(use, strips, policy.ReserveOf("outlets")));
        foreach (var strip in strips)
        {
            if (strip.Most is not null)
                entries.Add(Amperes(use, strip, result));
        }
    }

    private static LedgerEntry Outlets(RackUse use, List<Fitting> strips, Reserve reserve)
    {
        var plugs = use.Things.Where(thing => thing.HasPlug && thing.FedBy is null).ToList();
        // A strip gives places, and takes one itself where the outlets of the wall are counted.
        var taken = plugs.Count + (use.Rack.Outlets is null ? 0 : strips.Count);
        var there = (use.Rack.Outlets ?? 0) + strips.Sum(strip => strip.Places ?? 0);
        var entry = RackDraft.Of(use.Rack.Id, "outlets", ("mains plugs", "outlets"), "outlets").With(
            taken,
            there,
            reserve,
            new LateStory(
                e => $"{Words.Count(taken, "plug")} {(taken == 1 ? "wants" : "want")} one of {Words.Count(there, "mains outlet")} at {use.Rack.Id}.",
                e => new Working(
                    "one outlet for each plug that no standby supply feeds",
                    [
                        .. plugs.Select(thing => new WorkingInput($"plug of {thing.Id}", 1, "outlets", thing.Kind)),
                        .. strips.Select(strip => new WorkingInput($"places of {strip.Id}", strip.Places, "outlets", strip.At.ToString())),
                        new($"free at {use.Rack.Id}", use.Rack.Outlets, "outlets", use.Rack.Outlets is null ? "not surveyed; the strips are taken as plugged in" : use.Rack.At.ToString()),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("plugs", use.Rack.Outlets is null ? "counted" : "counted, strips too", taken, "outlets"), new("outlets", "the sum", there, "outlets")],
                    "counted"),
                e => [new("plugs", "outlets", taken, there, there - e.Reserve)]));
        return entry with
        {
            Cautions = entry.Studied == Verdict.Short ? [CautionTable.OutletStrip] : [],
            Advice = entry.Studied == Verdict.Short ? [$"one strip with enough places in {use.Rack.Id}, never one strip plugged into another"] : [],
        };
    }

    private static LedgerEntry Amperes(RackUse use, Fitting strip, RackingResult result)
    {
        var reserve = result.Bound.Job.Policy.ReserveOf("amperes");
        var loads = Loads(use, result);
        var missing = loads.FindAll(load => load.Watts is null);
        var watts = loads.Sum(load => load.Watts ?? 0);
        double? amperes = strip.Volts is { } volts ? StripLoad.Amperes(watts, volts.Value.Value, StripLoad.UsualPowerFactor) : null;
        var entry = RackDraft.Of(strip.Id, "amperes", ("current of outlets", "A"), "amperes").With(
            amperes,
            strip.Most!.Value.Value,
            reserve,
            new LateStory(
                e => $"What is plugged in at {use.Rack.Id} takes {Words.Of(watts)} W at its most, {Words.Of(e.Demand!.Value)} A; {strip.Id} may carry {Words.Of(e.Limit!.Value)} A.",
                e => new Working(
                    "I = Σ P / (U · cos φ), everything at {0} on this strip".Replace("{0}", use.Rack.Id, StringComparison.Ordinal),
                    [
                        .. loads.Select(load => new WorkingInput($"most from the mains, {load.Id}", load.Watts, "W", "study of power")),
                        new("mains voltage", strip.Volts?.Value.Value, "V", Origins.Of(strip.Volts)),
                        new("watts over volt-amperes", StripLoad.UsualPowerFactor, "", "common practice, no source"),
                        new("most of the strip", strip.Most.Value.Value, "A", Origins.Of(strip.Most)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("watts", "the sum", watts, "W"), new("current", $"{Words.Of(watts)} / {Words.Of(strip.Volts?.Value.Value ?? 0)} / {Words.Of(StripLoad.UsualPowerFactor)}", amperes, "A")],
                    "P = U I cos φ; the standby supply's own loss and charging are not in it"),
                e => [new("watts from the mains", "W", watts, watts * e.Limit / e.Demand, watts * (e.Limit - e.Reserve) / e.Demand)]),
            missing.Count == 0 ? null : new KnownParts(loads.Count - missing.Count, loads.Count));
        return entry with
        {
            Question = entry.Studied != Verdict.Unknown ? null : amperes is null ? $"which mains voltage is at {strip.Id}?" : $"what does {missing[0].Id} take from the mains? read it with a meter",
            Cautions = entry.Studied == Verdict.Short ? [CautionTable.OutletStrip] : [],
            Assumed = ["everything in the rack hangs on this strip, what the standby supply feeds too"],
            Advice = entry.Studied == Verdict.Short ? ["a second circuit, by a licensed person under the local code"] : [],
        };
    }

    private static List<(string Id, double? Watts)> Loads(RackUse use, RackingResult result) =>
        [.. use.Things.Where(thing => thing.Fitting is null && thing.Kind != "standby supply").Select(thing => (thing.Id, result.MainsWatts(thing.Id)))];
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>What a rack carries, and what its fixing holds.</summary>
internal static class WeightEntries
{
    /// <summary>One person alone should not lift more onto rails [kg]. Source: common practice, no source.</summary>
    public const double AlonePersonKilograms = 18;

    /// <summary>Adds the entries of one rack.</summary>
    public static void Add(List<LedgerEntry> entries, RackUse use, Policy policy)
    {
        var reserve = policy.ReserveOf("weight");
        entries.Add(Carried(use, reserve));
        if (use.Rack.Fixed == "wall")
            entries.Add(Held(use, reserve));
    }

    private static LedgerEntry Carried(RackUse use, Reserve reserve)
    {
        var things = Weighed(use);
        return Of((use.Rack.Id, "weight", $"weight in the rack"), (things, use.Load), reserve, $"what may rack {use.Rack.Id} carry? look at its label or data sheet", use) with
        {
            Cautions = Cautions(use),
        };
    }

    private static LedgerEntry Held(RackUse use, Reserve reserve)
    {
        var things = Weighed(use);
        things.Add((use.Rack.Id, use.Cabinet?.Body.Weight, use.Cabinet is null));
        return Of((use.Rack.Id, "fixing", "weight on its fixing"), (things, use.Rack.FixingLoad), reserve, $"what do the screws of {use.Rack.Id} and the wall behind them hold? find out what the wall is made of", use) with
        {
            Cautions = [CautionTable.WallLoad],
        };
    }

    private static LedgerEntry Of((string Id, string Quantity, string What) of, (List<(string Id, Given<Kilograms>? Weight, bool Must)> Things, Given<Kilograms>? Load) sum, Reserve reserve, string question, RackUse use)
    {
        var missing = sum.Things.FindAll(thing => thing.Weight is null && thing.Must);
        var known = sum.Things.Sum(thing => thing.Weight?.Value.Value ?? 0);
        var entry = RackDraft.Of(of.Id, of.Quantity, (of.What, "kg"), "weight").With(
            known,
            sum.Load?.Value.Value,
            reserve,
            new LateStory(
                e => $"{Words.Of(known)} kg {(of.Quantity == "fixing" ? "hang on the fixing of" : "lie in")} {use.Rack.Id}, which {(of.Quantity == "fixing" ? "holds" : "may carry")} {Words.Of(e.Limit!.Value)} kg.",
                e => new Working(
                    "Σ masses",
                    [
                        .. sum.Things.Where(thing => thing.Weight is not null || thing.Must).Select(thing => new WorkingInput($"mass of {thing.Id}", thing.Weight?.Value.Value, "kg", Origins.Of(thing.Weight))),
                        new(of.Quantity == "fixing" ? "what the fixing holds" : "what the rack may carry", sum.Load?.Value.Value, "kg", Origins.Of(sum.Load)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [new("together", "the sum", known, "kg")],
                    "a sum of masses; cords are not weighed"),
                e => [new("more weight beside what is there", "kg", 0, e.Left, e.Left - e.Reserve)]),
            missing.Count == 0 ? null : new KnownParts(sum.Things.Count - missing.Count, sum.Things.Count));
        return entry with
        {
            Question = entry.Studied != Verdict.Unknown ? null : sum.Load is null ? question : $"how heavy is {missing[0].Id}? weigh it, or look at its data sheet",
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? [$"stand the heaviest on the floor: {Heaviest(sum.Things)}"] : [],
        };
    }

    // A panel of a kilogram more or less is not asked for; a unit is.
    private static List<(string Id, Given<Kilograms>? Weight, bool Must)> Weighed(RackUse use) =>
        [.. use.Things.Select(thing => (thing.Id, thing.Weight, thing.Fitting is null))];

    private static string Heaviest(List<(string Id, Given<Kilograms>? Weight, bool Must)> things)
    {
        var (id, weight, _) = things.MaxBy(thing => thing.Weight?.Value.Value ?? 0);
        return $"{id} weighs {Words.Of(weight?.Value.Value ?? 0)} kg";
    }

    private static List<Caution> Cautions(RackUse use)
    {
        var cautions = new List<Caution>(2);
        if (use.Things.Any(thing => thing.Weight?.Value.Value > AlonePersonKilograms))
            cautions.Add(CautionTable.HeavyLift);
        if (use.Rack.Fixed == "nothing")
            cautions.Add(CautionTable.TipOver);
        return cautions;
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Racking;

/// <summary>Outlets of standby supplies.</summary>
internal static class StandbyOutletEntries
{
    // Any standby supply has as many; with more the number is worth asking for.
    private const int AnyHas = 2;

    /// <summary>Adds an entry for each standby supply that feeds something.</summary>
    public static void Add(List<LedgerEntry> entries, RackingResult result)
    {
        foreach (var standby in result.Bound.Design.Standby)
        {
            var fed = result.Things.Where(thing => thing.FedBy == standby.Id && thing.HasPlug).ToList();
            var outlets = standby.Model is { } model ? result.Bound.Catalogue.Standby.GetValueOrDefault(model)?.Outlets : null;
            if (fed.Count == 0 || (outlets is null && fed.Count <= AnyHas))
                continue;
            var reserve = result.Bound.Job.Policy.ReserveOf("outlets");
            var entry = RackDraft.Of(standby.Id, "outlets", ("plugs on its battery", "outlets"), "outlets").With(
                fed.Count,
                outlets,
                reserve,
                new LateStory(
                    e => $"{standby.Id} is to feed {Words.List([.. fed.Select(thing => thing.Id)])} and has {Words.Count(outlets!.Value, "outlet")} on its battery.",
                    e => new Working(
                        "one outlet for each plug that it feeds",
                        [.. fed.Select(thing => new WorkingInput($"plug of {thing.Id}", 1, "outlets", "fed-by of the design")), new("outlets on its battery", outlets, "outlets", outlets is null ? "not known" : "catalogue"), LateStory.ReserveInput(e, reserve)],
                        [new("plugs", "counted", fed.Count, "outlets")],
                        "counted"),
                    e => [new("plugs", "outlets", fed.Count, outlets, outlets - e.Reserve)]));
            entries.Add(entry with
            {
                Question = outlets is null ? $"how many outlets of {standby.Id} does its battery feed? count those not marked as surge only" : null,
                Cautions = entry.Studied == Verdict.Short ? [CautionTable.OutletStrip] : [],
                Advice = entry.Studied == Verdict.Short ? ["leave on the mains what may go dark", "or another model with more outlets; a strip behind a standby supply only where its maker allows it"] : [],
            });
        }
    }
}

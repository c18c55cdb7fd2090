using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Entries for the watts and amperes of an injector or midspan.</summary>
internal static class InjectorEntries
{
    /// <summary>The entries of one injector; amperes only where its output is rated in them.</summary>
    public static IEnumerable<LedgerEntry> Of(InjectorPower injector, Policy policy)
    {
        yield return Entry(injector, policy.ReserveOf("power"), ("watts", "W", "power", injector.DemandWatts, injector.BudgetWatts));
        if (injector.Injector.Model.Passive?.Amperes is { } amperes)
            yield return Entry(injector, policy.ReserveOf("amperes"), ("amperes", "A", "amperes", injector.Amperes, amperes.Value.Value * injector.Injector.Model.Ports));
    }

    private static LedgerEntry Entry(
        InjectorPower injector, Reserve reserve, (string Quantity, string Unit, string Kind, double Demand, double? Limit) of)
    {
        var parts = injector.Known == injector.Asking.Count ? null : new KnownParts(injector.Known, injector.Asking.Count);
        var verdict = Judge.Of(of.Demand, of.Limit, reserve, parts);
        return new LedgerEntry
        {
            Id = $"power/{injector.Injector.Id}/{of.Quantity}",
            Discipline = PowerLedger.Discipline,
            Subject = injector.Injector.Id,
            Quantity = of.Quantity,
            What = $"{of.Quantity} it gives, {PowerWords.Brief(injector.State)}",
            Unit = of.Unit,
            Kind = of.Kind,
            Demand = of.Demand,
            Limit = of.Limit,
            Reserve = of.Limit is { } limit ? reserve.Of(limit) : null,
            Studied = verdict,
            Parts = parts,
            Question = verdict != Verdict.Unknown ? null
                : of.Limit is null ? $"how many {of.Quantity} gives {injector.Injector.Id}? its plate says"
                : injector.Asking.Count == 1 ? $"what does {injector.Asking[0].Id} draw, and how long is its run?"
                : $"what do {Words.List([.. injector.Asking.Select(port => port.Id)])} draw, and how long are their runs?",
            Cautions = injector.Injector.Model.Passive is null ? [] : [CautionTable.AlwaysOn],
            Story = new InjectorStory(injector, reserve),
        };
    }
}

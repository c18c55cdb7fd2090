using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>Entries for the watts, volt-amperes and minutes of a standby supply.</summary>
internal static class SupplyEntries
{
    /// <summary>Adds the entries of one supply; minutes only where somebody wants some.</summary>
    public static void Add(List<LedgerEntry> entries, StandbySupply supply, Policy policy)
    {
        if (supply.Fed.Count > 0)
        {
            entries.Add(Load(supply, policy.ReserveOf("power"), ("watts", "W", "power", supply.Model.Real?.Value.Value)));
            if (!supply.Model.GivesDc)
                entries.Add(Load(supply, policy.ReserveOf("apparent"), ("volt-amperes", "VA", "apparent", supply.Model.Apparent?.Value.Value)));
        }

        if (supply.Wanted is not null)
            entries.Add(Runtime(supply, policy.ReserveOf("runtime")));
    }

    private static LedgerEntry Load(StandbySupply supply, Reserve reserve, (string Quantity, string Unit, string Kind, double? Limit) of)
    {
        var (sum, known, guessed, missing) = (0.0, 0, 0, (string?)null);
        foreach (var unit in supply.Fed)
        {
            missing ??= unit.Question;
            if (unit.MostWatts is not { } watts)
                continue;
            sum += of.Unit == "VA" ? ConverterLoad.ApparentVoltAmperes(watts, unit.PowerFactor) : watts;
            guessed += unit.FactorAssumed ? 1 : 0;
            known++;
        }

        var parts = known == supply.Fed.Count ? null : new KnownParts(known, supply.Fed.Count);
        var verdict = Judge.Of(sum, of.Limit, reserve, parts);
        return new LedgerEntry
        {
            Id = $"standby/{supply.Placed.Id}/{of.Quantity}",
            Discipline = StandbyLedger.Discipline,
            Subject = supply.Placed.Id,
            Quantity = of.Quantity,
            What = $"{of.Quantity} it feeds",
            Unit = of.Unit,
            Kind = of.Kind,
            Demand = sum,
            Limit = of.Limit,
            Reserve = of.Limit is { } limit ? reserve.Of(limit) : null,
            Studied = verdict,
            Parts = parts,
            Question = verdict != Verdict.Unknown ? null
                : of.Limit is null ? $"how many {of.Unit} gives {supply.Placed.Id}? its plate says"
                : missing,
            Assumed = of.Unit == "VA" && guessed > 0 ? [$"power factor of {Words.Count(guessed, "load")} on {supply.Placed.Id} not written: {Words.Of(FedUnit.UsualPowerFactor * 100)} % taken"] : [],
            Story = new FedStory(supply, reserve, of.Unit),
        };
    }

    private static LedgerEntry Runtime(StandbySupply supply, Reserve reserve)
    {
        var wanted = supply.Wanted!.Value.Value;
        var there = RuntimeLimit.Seconds(supply);
        var verdict = Judge.Of(wanted / 60, there / 60, reserve);
        var mends = verdict is Verdict.Short or Verdict.Tight;
        return new LedgerEntry
        {
            Id = $"standby/{supply.Placed.Id}/runtime",
            Discipline = StandbyLedger.Discipline,
            Subject = supply.Placed.Id,
            Quantity = "runtime",
            What = "minutes on battery, aged",
            Unit = "min",
            Kind = "runtime",
            Sense = Sense.AtLeast,
            Demand = wanted / 60,
            Limit = there / 60,
            Reserve = there is { } seconds ? reserve.Of(seconds / 60) : null,
            Studied = verdict,
            PlusMinus = RuntimeLimit.Spread(supply) / 60,
            Question = verdict == Verdict.Unknown ? RuntimeLimit.Question(supply) : null,
            Assumed = RuntimeLimit.Assumed(supply),
            Beside = new LateList<BesideRow>(() => RuntimeLimit.Beside(supply)),
            Advice = mends ? new LateList<string>(() => RuntimeAdvice.Of(supply, reserve)) : [],
            Cautions = mends || supply.PastLife ? [CautionTable.Battery] : [],
            Story = new RuntimeStory(supply, reserve),
        };
    }
}

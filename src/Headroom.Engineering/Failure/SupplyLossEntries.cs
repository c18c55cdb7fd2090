using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Failure;

/// <summary>Entries for what goes on when one of several supplies fails: that there is another, and that it is enough for the ports.</summary>
internal static class SupplyLossEntries
{
    private static readonly string[] Pair = ["fit a supply of two pieces, or take a model that has one", "where the house can bear it, leave out 'a supply may fail' of its failures"];
    private static readonly string[] Less = ["take a model or supply that leaves more with one piece lost", "move devices that take power to another switch"];
    private static readonly Caution[] Mains = [CautionTable.Mains];

    /// <summary>The entries of one switch or midspan.</summary>
    public static IEnumerable<LedgerEntry> Of(SupplyLoss unit, Policy policy)
    {
        yield return Pieces(unit, policy.ReserveOf("supplies"));
        if (unit is { Feeds: true, Supply.Pieces: > 1 })
            yield return Watts(unit, policy.ReserveOf("supply lost"));
    }

    private static LedgerEntry Pieces(SupplyLoss unit, Reserve reserve)
    {
        var entry = new EntryDraft(FailureLedger.Discipline, unit.Id, "supplies", "supplies it may lose", "supplies", "supplies")
            .With(1, unit.Supply is { } supply ? supply.Pieces - 1 : null, reserve, new SupplyPiecesStory(unit, reserve));
        return entry.Studied switch
        {
            Verdict.Unknown => entry with { Question = $"how many supplies has {unit.Model}? its back shows them" },
            Verdict.Short or Verdict.Tight => entry with { Advice = Pair, Cautions = Mains },
            _ => entry,
        };
    }

    private static LedgerEntry Watts(SupplyLoss unit, Reserve reserve)
    {
        var entry = new EntryDraft(FailureLedger.Discipline, unit.Id, "one-lost", "watts, one supply lost", "W", "supply lost")
            .With(unit.RunningWatts, unit.Supply!.OneLost?.Value.Value, reserve, new SupplyWattsStory(unit, reserve));
        return entry.Studied switch
        {
            Verdict.Unknown => entry with { Question = entry.Limit is null ? $"what does {unit.Model} leave for its ports with one supply lost? its data sheet says" : $"what does {unit.Id} give its ports? see its watts" },
            Verdict.Short or Verdict.Tight => entry with { Advice = Less },
            _ => entry,
        };
    }
}

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
        var limit = unit.Supply is { } supply ? supply.Pieces - 1 : (double?)null;
        var studied = Judge.Of(1, limit, reserve);
        var poor = studied is Verdict.Short or Verdict.Tight;
        return new()
        {
            Discipline = FailureLedger.Discipline, Subject = unit.Id, Quantity = "supplies", What = "supplies it may lose", Unit = "supplies", Kind = "supplies",
            Demand = 1, Limit = limit, Reserve = limit is { } there ? reserve.Of(there) : null, Studied = studied,
            Question = studied == Verdict.Unknown ? $"how many supplies has {unit.Model}? its back shows them" : null,
            Advice = poor ? Pair : [],
            Cautions = poor ? Mains : [],
            Story = new SupplyPiecesStory(unit, reserve),
        };
    }

    private static LedgerEntry Watts(SupplyLoss unit, Reserve reserve)
    {
        var limit = unit.Supply!.OneLost?.Value.Value;
        var studied = Judge.Of(unit.RunningWatts, limit, reserve);
        return new()
        {
            Discipline = FailureLedger.Discipline, Subject = unit.Id, Quantity = "one-lost", What = "watts, one supply lost", Unit = "W", Kind = "supply lost",
            Demand = unit.RunningWatts, Limit = limit, Reserve = limit is { } there ? reserve.Of(there) : null, Studied = studied,
            Question = studied != Verdict.Unknown ? null
                : limit is null ? $"what does {unit.Model} leave for its ports with one supply lost? its data sheet says"
                : $"what does {unit.Id} give its ports? see its watts",
            Advice = studied is Verdict.Short or Verdict.Tight ? Less : [],
            Story = new SupplyWattsStory(unit, reserve),
        };
    }
}

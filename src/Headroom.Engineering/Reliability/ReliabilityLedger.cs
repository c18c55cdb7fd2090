using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Reliability;

/// <summary>Turns the result of the study of the fleet into ledger entries.</summary>
public static class ReliabilityLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "reliability";

    private static readonly string[] More = ["ask the supplier for a shorter time", "order one more for the shelf"];

    /// <summary>The entries of a result: the shelf of each model.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries.</returns>
    public static List<LedgerEntry> Entries(ReliabilityResult result)
    {
        var entries = new List<LedgerEntry>(result.Rates.Count);
        var reserve = result.Policy.ReserveOf("spares");
        foreach (var rate in result.Rates)
        {
            double? needed = rate.Needed;
            double? there = rate.Row.Spares;
            var studied = Judge.Of(needed, there, reserve);
            entries.Add(new()
            {
                Discipline = Discipline, Subject = rate.Row.Model, Quantity = "spares", What = "spares on the shelf", Unit = "pieces", Kind = "spares", Sense = Sense.AtLeast,
                Demand = needed, Limit = there, Reserve = there is { } limit ? reserve.Of(limit) : null, Studied = studied,
                Question = studied == Verdict.Unknown ? Question(rate) : null,
                Advice = studied is Verdict.Short or Verdict.Tight ? More : [],
                Story = new SparesStory(rate, reserve),
            });
        }

        return entries;
    }

    private static string Question(FleetRate rate) => rate switch
    {
        { Row.Units: null } => "how many are in service? the firm's own list says",
        { LeadHours: null } => "how long until a new one comes? ask the supplier",
        { Belief: null } => "how often does it fail? count service and failures, or write its maker's 'mtbf'",
        _ => "how many lie on the shelf? count them",
    };
}

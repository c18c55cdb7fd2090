using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Failure;

/// <summary>Turns the result of the study of failures into ledger entries; where the house sets no limit there are none.</summary>
public static class FailureLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "failure";

    private static readonly string[] Spread = ["spread the endpoints that matter over two units", "keep a spare on the shelf, set up and labelled"];
    private static readonly string[] Faster = ["agree on a shorter time until somebody comes with the part", "keep a spare on site", "a second line from another maker's duct"];
    private static readonly Caution[] Mains = [CautionTable.Mains];

    /// <summary>The entries of a result.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries.</returns>
    public static List<LedgerEntry> Entries(FailureResult result)
    {
        var policy = result.Bound.Job.Policy;
        var entries = new List<LedgerEntry>();
        if (policy.Failures?.MostDark is { } dark)
        {
            foreach (var effect in result.Effects)
                entries.Add(Dark(effect, dark, policy));
        }

        if (policy.Failures?.SupplyMayFail == true)
        {
            foreach (var unit in result.SupplyLosses)
                entries.AddRange(SupplyLossEntries.Of(unit, policy));
        }

        if (policy.Failures?.MostLost is { } lost)
        {
            foreach (var endpoint in result.Bound.Endpoints)
            {
                if (result.Ways.Of(endpoint) is { } way)
                    entries.Add(Lost((endpoint, way), result, lost.Value.Value / 3600));
            }
        }

        return entries;
    }

    private static LedgerEntry Dark(FailureEffect effect, int most, Policy policy)
    {
        var reserve = policy.ReserveOf("dark");
        var studied = Judge.Known(effect.Lost, most, reserve.Of(most));
        return new()
        {
            Discipline = Discipline, Subject = effect.Subject, Quantity = "dark", What = "lost when it fails", Unit = "ports", Kind = "dark",
            Demand = effect.Lost, Limit = most, Reserve = reserve.Of(most), Studied = studied,
            Advice = studied is Verdict.Short or Verdict.Tight ? Spread : [],
            Story = new DarkStory(effect, reserve),
        };
    }

    private static LedgerEntry Lost((Binding.BoundEndpoint Endpoint, WayShare Way) of, FailureResult result, double most)
    {
        var reserve = result.Bound.Job.Policy.ReserveOf("outage");
        var hours = Availability.HoursLost(of.Way.Share);
        var parts = of.Way.Known == of.Way.All ? null : new KnownParts(of.Way.Known, of.Way.All);
        var studied = Judge.Of(hours, most, reserve, parts);
        var poor = studied is Verdict.Short or Verdict.Tight;
        return new()
        {
            Discipline = Discipline, Subject = of.Endpoint.Id, Quantity = "lost", What = "lost in a year", Unit = "h", Kind = "outage",
            Demand = hours, Limit = most, Reserve = reserve.Of(most), Studied = studied, Parts = parts,
            Question = studied == Verdict.Unknown ? $"how long does {of.Way.Missing} last between failures? its maker or its contract says" : null,
            Advice = poor ? Faster : [],
            Cautions = poor ? Mains : [],
            Story = new LostStory(result, of.Endpoint, reserve),
        };
    }
}

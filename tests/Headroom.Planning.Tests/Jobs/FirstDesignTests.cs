using System.Text.Json;
using Headroom.Domain.Ledgers;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Jobs;

/// <summary>A design is there at once, for whoever stops the search early.</summary>
public sealed class FirstDesignTests
{
    private static readonly PlanRequest Asked = new(ShippedJobs.Day) { OnlyCheapest = true };

    [Theory]
    [InlineData("school-wings")]
    [InlineData("print-shop")]
    [InlineData("one-desk")]
    public void A_search_that_is_stopped_before_it_begins_still_has_a_design(string name)
    {
        var job = ShippedJobs.Of(name);
        var stopped = Asked with { Effort = PackEffort.Usual with { Stop = new CancellationToken(canceled: true) } };
        var plan = Planner.Propose(job, ShippedJobs.Catalogue, stopped);
        var proved = Planner.Propose(job, ShippedJobs.Catalogue, Asked).Proposals[0];
        var first = Assert.Single(plan.Proposals);
        Assert.True(plan.MayDiffer);
        Assert.True(first.Cost.Total >= proved.Cost.Total);
        Assert.DoesNotContain(first.Ledger.Entries, entry => entry.Verdict is Verdict.Short or Verdict.Tight && first.Design.Switches.Any(unit => unit.Id == entry.Subject));
        // Not told as proved unless it is the cheapest.
        Assert.True(!first.Proof.Proved || first.Cost.Total == proved.Cost.Total);
        var again = Planner.Propose(job, ShippedJobs.Catalogue, stopped).Proposals[0];
        Assert.Equal(JsonSerializer.Serialize(first.Design), JsonSerializer.Serialize(again.Design));
    }

    [Theory]
    [InlineData("school-wings")]
    [InlineData("barn-vets")]
    public void What_is_told_is_never_taken_back(string name)
    {
        var told = new List<(long Best, long Bound)>();
        var asked = Asked with { Effort = PackEffort.Usual with { Told = (best, bound) => told.Add((best, bound)) } };
        var cost = Planner.Propose(ShippedJobs.Of(name), ShippedJobs.Catalogue, asked).Proposals[0].Cost.Total * 100;
        var best = told.Where(at => at.Best > 0).Select(at => at.Best).ToList();
        Assert.Equal(best.OrderDescending(), best);
        Assert.Equal(told.Select(at => at.Bound).Order(), told.Select(at => at.Bound));
        // Coins of single units are rounded one by one.
        Assert.All(told, at => Assert.True(at.Bound <= cost + 5, $"{at} {cost}"));
        Assert.All(best, at => Assert.True(at >= cost - 5, $"{at} {cost}"));
    }
}

using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Tests.Jobs;

public sealed class BarnTests
{
    private static readonly Lazy<Plan> Plan = new(() => Planner.Propose(ShippedJobs.Of("barn-vets"), ShippedJobs.Catalogue, new PlanRequest(ShippedJobs.Day)));

    [Fact]
    public void The_cheapest_design_is_proved() => Assert.True(Plan.Value.Proposals[0].Proof.Proved);

    [Fact]
    public void No_design_that_is_shown_is_short() => Assert.All(Plan.Value.Proposals, proposal => Assert.Equal(0, proposal.Ledger.Count(Verdict.Short)));

    [Fact]
    public void Both_designs_of_the_job_lose_and_it_is_said_by_what()
    {
        var ofTheJob = Plan.Value.Refused.Where(refused => refused.Why == "of the job").ToList();
        Assert.Equal("standby/phone/back", ofTheJob[0].Entry);
        Assert.Contains("growth wants 2", ofTheJob[1].Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_growth_it_costs_no_more_than_the_better_one_of_the_job()
    {
        var request = new PlanRequest(ShippedJobs.Day) { OnlyCheapest = true, Pins = new() { WithoutGrowth = true } };
        var plan = Planner.Propose(ShippedJobs.Of("barn-vets"), ShippedJobs.Catalogue, request);
        var mended = Plan.Value.Refused.Single(refused => refused.Bought.StartsWith("mended", StringComparison.Ordinal));
        Assert.True(plan.Proposals[0].Proof.Proved);
        Assert.True(plan.Proposals[0].Cost.Total <= mended.Total, $"{plan.Proposals[0].Bought} {plan.Proposals[0].Cost.Total} against {mended.Total}");
    }
}

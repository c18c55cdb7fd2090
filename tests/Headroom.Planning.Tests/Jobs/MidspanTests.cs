using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Planning.Tests.Jobs;

/// <summary>A midspan beside a switch that gives no power, where that is cheaper.</summary>
public sealed class MidspanTests
{
    private static readonly string[] Switches = ["hazel", "birch", "tarn", "smew", "rowan"];

    private static PlanRequest Request => new(ShippedJobs.Day) { OnlyCheapest = true };

    // Few models, and midspans of a price that draws lots: everything else is as shipped.
    private static Catalogue Few(int pollard, int coppice) => ShippedJobs.Catalogue with
    {
        Switches = Switches.ToDictionary(id => id, id => ShippedJobs.Catalogue.Switches[id] with { SettingsOffered = [] }),
        Injectors = new[] { ("pollard", pollard), ("coppice", coppice) }.ToDictionary(one => one.Item1, one => Priced(ShippedJobs.Catalogue.Injectors[one.Item1], one.Item2)),
    };

    private static InjectorModel Priced(InjectorModel model, int price) => model with { Body = model.Body with { Price = model.Body.Price! with { Value = model.Body.Price.Value with { Amount = price } } } };

    private static Job Job(int phones, int points, int plain) => ShippedJobs.Text($$$"""
        headroom: 1
        job: Corner shop
        survey:
          endpoints:
            {{{(phones > 0 ? $"{phones} x pipit:" : "1 x token:")}}}
            {{{(points > 0 ? $"{points} x bulrush:" : "1 x recorder:")}}}
            {{{(plain > 0 ? $"{plain} x workstation:" : "1 x printer:")}}}
        """);

    [Fact]
    public void It_is_bought_where_it_is_cheaper_and_not_where_it_is_dearer()
    {
        var cheap = Planner.Propose(Job(6, 0, 4), Few(20, 500), Request).Proposals[0];
        Assert.Equal("hazel + pollard", cheap.Bought);
        var midspan = Assert.Single(cheap.Design.Injectors);
        // The phones hang on the midspan, and its data side comes from as many ports of the switch.
        Assert.Equal(6, cheap.Design.Patch.Count(patch => patch.To.Unit == midspan.Id));
        Assert.Equal(6, midspan.From.Distinct().Count());
        Assert.All(midspan.From, from => Assert.Equal("switch-1", from.Unit));
        Assert.Equal(0, cheap.Ledger.Count(Verdict.Short) + cheap.Ledger.Count(Verdict.Tight));
        Assert.True(cheap.Proof.Proved);
        var dear = Planner.Propose(Job(6, 0, 4), Few(400, 500), Request).Proposals[0];
        Assert.Empty(dear.Design.Injectors);
        Assert.True(dear.Cost.Total <= 61 + 400);
    }

    [Fact]
    public void Two_stand_beside_one_switch_where_one_has_too_few_ports()
    {
        var plan = Planner.Propose(Job(14, 0, 1), Few(10, 500), Request).Proposals[0];
        Assert.Contains("2 x pollard", plan.Bought, StringComparison.Ordinal);
        Assert.All(plan.Design.Injectors, midspan => Assert.InRange(midspan.From.Count, 0, 8));
        Assert.Equal(0, plan.Ledger.Count(Verdict.Short) + plan.Ledger.Count(Verdict.Tight));
    }

    [Fact]
    public void No_fan_is_bought_with_it_where_none_may_be()
    {
        var plan = Planner.Propose(Job(6, 0, 4), Few(20, 20), Request with { Pins = new() { Fanless = true } });
        Assert.All(plan.Proposals, proposal => Assert.Empty(proposal.Design.Injectors));
    }

    // Against every set of one or two switches, each alone or with midspans beside it, and every way of sharing out: the study alone decides.
    [Fact]
    public void Random_jobs_come_to_the_cheapest_set_that_the_study_accepts() => Gen.Select(Gen.Int[0, 9], Gen.Int[0, 5], Gen.Int[0, 4], Gen.Int[5, 160], Gen.Int[5, 160]).Sample(
        (phones, points, plain, pollard, coppice) =>
        {
            var (job, catalogue) = (Job(phones, points, plain), Few(pollard, coppice));
            var planned = Planner.Propose(job, catalogue, Request).Proposals is [var only] ? only : null;
            var least = EverySetWithMidspans.Least(job, catalogue, ShippedJobs.Day);
            var few = planned?.Design.Switches.Count <= 2;
            Assert.True(few ? planned!.Cost.Total == least?.Cost : (planned?.Cost.Total ?? decimal.MaxValue) <= (least?.Cost ?? decimal.MaxValue), $"{phones} {points} {plain} at {pollard} and {coppice}: {least}; planned: {planned?.Bought} {planned?.Cost.Total}");
        },
        iter: Long.Samples(300), threads: 1);
}

using Headroom.Domain.Ledgers;

namespace Headroom.Planning.Tests.Jobs;

public sealed class SmallJobTests
{
    private const string TwoKinds = """
        headroom: 1
        job: Corner shop
        survey:
          endpoints:
            3 x pipit:
            2 x bulrush:
        """;

    private static PlanRequest Request => new(ShippedJobs.Day);

    [Fact]
    public void Counts_alone_are_enough()
    {
        var plan = Planner.Propose(ShippedJobs.Text(TwoKinds), ShippedJobs.Catalogue, Request);
        Assert.True(plan.Proposals[0].Proof.Proved);
        Assert.All(plan.Proposals, proposal => Assert.Equal(0, proposal.Ledger.Count(Verdict.Short) + proposal.Ledger.Count(Verdict.Tight)));
        Assert.Equal(5, plan.Proposals[0].Design.Patch.Count);
    }

    [Fact]
    public void The_same_job_has_the_same_designs()
    {
        var (one, two) = (Planner.Propose(ShippedJobs.Text(TwoKinds), ShippedJobs.Catalogue, Request), Planner.Propose(ShippedJobs.Text(TwoKinds), ShippedJobs.Catalogue, Request));
        Assert.Equal(one.Proposals.Select(Told), two.Proposals.Select(Told));

        static string Told(Headroom.Domain.Plans.Proposal proposal) => $"{proposal.Bought} {proposal.Cost.Total} {string.Join(' ', proposal.Design.Patch.Select(patch => $"{patch.What}:{patch.To}"))}";
    }

    // The planner against every set of up to two switches of a small catalogue: the study alone decides which of them do.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(4, 1)]
    [InlineData(3, 3)]
    [InlineData(7, 2)]
    [InlineData(0, 5)]
    public void It_is_as_cheap_as_the_cheapest_set_that_the_study_accepts(int phones, int points)
    {
        var job = ShippedJobs.Text(TwoKinds.Replace("3 x pipit:", phones > 0 ? $"{phones} x pipit:" : "1 x workstation:", StringComparison.Ordinal).Replace("2 x bulrush:", points > 0 ? $"{points} x bulrush:" : "2 x printer:", StringComparison.Ordinal));
        var models = new[] { "vetch", "teasel", "tarn", "alder" };
        var catalogue = ShippedJobs.Catalogue with
        {
            Switches = models.ToDictionary(id => id, id => ShippedJobs.Catalogue.Switches[id] with { SettingsOffered = [.. ShippedJobs.Catalogue.Switches[id].SettingsOffered.Where(by => by != Headroom.Domain.Jobs.ReservesBy.PortLimit)] }),
            Injectors = new Dictionary<string, Headroom.Domain.Catalogues.InjectorModel>(),
        };
        var plan = Planner.Propose(job, catalogue, Request with { OnlyCheapest = true });
        var least = EverySet.Least(job, catalogue, ShippedJobs.Day);
        var planned = plan.Proposals.Count == 0 ? null : plan.Proposals[0];
        var agrees = planned?.Design.Switches.Count > 2 ? planned.Cost.Total <= (least?.Cost ?? decimal.MaxValue) : planned?.Cost.Total == least?.Cost;
        Assert.True(agrees, $"{least}; planned: {planned?.Bought} {planned?.Cost.Total}");
    }

    [Fact]
    public void One_more_endpoint_never_costs_less()
    {
        decimal before = 0;
        for (var phones = 1; phones <= 9; phones += 2)
        {
            var plan = Planner.Propose(ShippedJobs.Text(TwoKinds.Replace("3 x", $"{phones} x", StringComparison.Ordinal)), ShippedJobs.Catalogue, Request with { OnlyCheapest = true });
            Assert.True(plan.Proposals[0].Cost.Total >= before, $"{phones}: {plan.Proposals[0].Bought} {plan.Proposals[0].Cost.Total} after {before} {string.Join('\n', plan.Refused)}");
            before = plan.Proposals[0].Cost.Total;
        }
    }

    [Fact]
    public void A_switch_that_stays_is_in_every_design_and_costs_nothing()
    {
        var job = ShippedJobs.Text(TwoKinds + "\ndesigns:\n  now:\n    switches: {sw-1: {model: tarn}}\n");
        var plan = Planner.Propose(job, ShippedJobs.Catalogue, Request with { Pins = new() { Keep = ["sw-1"] } });
        Assert.All(plan.Proposals, proposal => Assert.Contains(proposal.Design.Switches, unit => unit.Model == "tarn"));
        Assert.Equal(0, plan.Proposals[0].Cost.Goods);
    }

    [Fact]
    public void What_nothing_in_the_catalogue_serves_is_named()
    {
        var catalogue = ShippedJobs.Catalogue with { Switches = new Dictionary<string, Headroom.Domain.Catalogues.SwitchModel> { ["hazel"] = ShippedJobs.Catalogue.Switches["hazel"] }, Injectors = new Dictionary<string, Headroom.Domain.Catalogues.InjectorModel>() };
        var plan = Planner.Propose(ShippedJobs.Text(TwoKinds), catalogue, Request);
        Assert.Empty(plan.Proposals);
        Assert.Contains(plan.Clashes, clash => clash.Requirement.Contains("bulrush", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_without_endpoints_is_refused() =>
        Assert.Contains("no endpoints", Planner.Propose(ShippedJobs.Text("headroom: 1\njob: Empty\n"), ShippedJobs.Catalogue, Request).Complaints[0], StringComparison.Ordinal);

    [Fact]
    public void The_draw_at_which_a_bigger_design_is_needed_is_a_number()
    {
        var job = ShippedJobs.Text(TwoKinds);
        var (points, complaints) = Planner.Turn(job, ShippedJobs.Catalogue, Request, ["draw:bulrush"]);
        Assert.Empty(complaints);
        var up = points.Single(point => point.Up);
        Assert.True(up.Proved);
        Assert.InRange(up.At!.Value, up.Now, up.Looked);
        Assert.NotEqual(up.Bought, up.Then);
    }
}

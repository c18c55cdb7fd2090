using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;

namespace Headroom.Planning.Tests.Jobs;

/// <summary>Where the policy says that a supply may fail, only switches are bought that go on without one of theirs.</summary>
public sealed class SupplyPairTests
{
    private static PlanRequest Request => new(ShippedJobs.Day) { OnlyCheapest = true };

    private static Domain.Jobs.Job Job(string failures, int points) => ShippedJobs.Text($$$"""
        headroom: 1
        job: Corner shop
        policy: {failures: {{{{failures}}}}}
        survey:
          endpoints:
            {{{points}}} x bulrush:
            2 x workstation:
        """);

    [Fact]
    public void Only_what_has_a_supply_to_lose_is_bought_and_the_study_confirms_it()
    {
        var single = Planner.Propose(Job("", 4), ShippedJobs.Catalogue, Request).Proposals[0];
        var pair = Planner.Propose(Job("a supply may fail: yes", 4), ShippedJobs.Catalogue, Request).Proposals[0];
        Assert.True(pair.Cost.Total > single.Cost.Total);
        Assert.All(pair.Design.Switches, unit => Assert.True(ShippedJobs.Catalogue.Switches[unit.Model!].Supplies[0].Pieces > 1));
        Assert.Equal(Verdict.Clear, Entry(pair.Ledger, "failure/switch-1/supplies").Verdict);
        var left = Entry(pair.Ledger, "failure/switch-1/one-lost");
        Assert.Equal((Verdict.Clear, 209), (left.Verdict, left.Limit));
        Assert.True(pair.Proof.Proved);
        Assert.DoesNotContain(single.Ledger.Entries, entry => entry.Discipline == "failure");
    }

    // By class an access point of 30 W sets 30 W aside: with one supply lost there is room for six, with both for eleven with the reserve.
    [Theory]
    [InlineData("a supply may fail: yes", 9, 2)]
    [InlineData("", 9, 1)]
    public void What_is_left_with_one_supply_lost_decides_how_many_are_needed(string failures, int points, int switches)
    {
        var shrike = ShippedJobs.Catalogue.Switches["shrike"];
        var byClass = ShippedJobs.Catalogue with
        {
            Switches = new Dictionary<string, SwitchModel> { ["shrike"] = shrike with { Setting = shrike.Setting with { ReservesBy = Domain.Jobs.ReservesBy.Class }, SettingsOffered = [] } },
            Injectors = new Dictionary<string, InjectorModel>(),
        };
        var plan = Planner.Propose(Job(failures, points), byClass, Request);
        Assert.Equal(switches, Assert.Single(plan.Proposals).Design.Switches.Count);
    }

    [Fact]
    public void Where_no_model_has_one_the_requirement_is_named_and_what_giving_it_up_costs()
    {
        var without = ShippedJobs.Catalogue with { Switches = ShippedJobs.Catalogue.Switches.Where(pair => pair.Key != "shrike").ToDictionary() };
        var plan = Planner.Propose(Job("a supply may fail: yes", 4), without, Request with { OnlyCheapest = false });
        Assert.Empty(plan.Proposals);
        var clash = Assert.Single(plan.Clashes);
        Assert.Equal("every switch goes on when one of its supplies fails", clash.Requirement);
        Assert.Equal(Planner.Propose(Job("", 4), without, Request).Proposals[0].Cost.Total, clash.Total);
        Assert.Contains(plan.Refused, refused => refused.Entry == "failure/switch-1/supplies");
    }

    [Fact]
    public void Where_nobody_knows_what_is_left_it_is_asked_for_and_never_counts_as_kept()
    {
        var shrike = ShippedJobs.Catalogue.Switches["shrike"];
        var silent = ShippedJobs.Catalogue with { Switches = new Dictionary<string, SwitchModel> { ["shrike"] = shrike with { Supplies = [shrike.Supplies[0] with { OneLost = null }] } } };
        var plan = Planner.Propose(Job("a supply may fail: yes", 4), silent, Request);
        var entry = Entry(Assert.Single(plan.Proposals).Ledger, "failure/switch-1/one-lost");
        Assert.Equal(Verdict.Unknown, entry.Verdict);
        Assert.Contains("with one supply lost", entry.Question, StringComparison.Ordinal);
    }

    private static LedgerEntry Entry(Ledger ledger, string id) => ledger.Entries.Single(entry => entry.Id == id);
}

using Headroom.Domain.Ledgers;
using Headroom.Planning.Jobs;

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

    private static readonly string[] Models = ["vetch", "teasel", "tarn", "smew", "hazel", "sorrel"];

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

    // Each model alone, where it costs within the range, is among the designs that are found when all may be used.
    [Fact]
    public void No_set_within_the_range_is_lost()
    {
        var work = new PlanWork(ShippedJobs.Of("one-desk"), ShippedJobs.Catalogue, Request);
        Assert.True(work.Look());
        var range = work.Search.Found.Min(found => found.Cost.Total) * 1.15m;
        foreach (var model in new[] { "tarn", "furze", "alder" })
        {
            var alone = Planner.Propose(ShippedJobs.Of("one-desk"), ShippedJobs.Catalogue, Request with { OnlyCheapest = true, Pins = new() { Models = [model] } }).Proposals[0];
            Assert.True(alone.Cost.Total <= range, $"{model} {alone.Cost.Total}");
            Assert.Contains(alone.Bought, work.Search.Found.Select(found => found.Bought));
        }
    }

    // Some hundred jobs of three kinds and up to three models without pluggable ports, most of them possible and some not: the study alone decides.
    [Fact]
    public void Random_jobs_come_to_the_cheapest_set_that_the_study_accepts() => Gen.Select(Gen.Int[0, 6], Gen.Int[0, 4], Gen.Int[0, 3], Gen.Int[0, 63], Gen.Int[0, 2]).Sample(
        (phones, points, plain, models, reserve) =>
        {
            var job = ShippedJobs.Text(Text(phones, points, plain, reserve));
            var chosen = Models.Where((_, i) => (models & (1 << i)) != 0).Take(3).DefaultIfEmpty("sorrel").ToArray();
            var catalogue = Few(chosen);
            var plan = Planner.Propose(job, catalogue, Request with { OnlyCheapest = true });
            var least = EverySet.Least(job, catalogue, ShippedJobs.Day);
            var planned = plan.Proposals.Count == 0 ? null : plan.Proposals[0];
            var agrees = planned?.Design.Switches.Count > 2 ? planned.Cost.Total <= (least?.Cost ?? decimal.MaxValue) : planned?.Cost.Total == least?.Cost;
            Assert.True(agrees, $"{phones} {points} {plain} {reserve} of {string.Join(' ', chosen)}: {least}; planned: {planned?.Bought} {planned?.Cost.Total}");
            Assert.True(planned is null || planned.Proof.Proved);
        },
        iter: Long.Samples(300), threads: 1);

    // The first filling of the box with one injector beside it does not start in the class powers; the other one does.
    [Fact]
    public void Other_cords_in_one_box_alone_are_tried_too()
    {
        var plan = Planner.Propose(ShippedJobs.Text(Text(1, 2, 2, 0)), ShippedJobs.Catalogue, Request with { OnlyCheapest = true }).Proposals[0];
        Assert.Equal(("teasel, supply small + wicker", 99m), (plan.Bought, plan.Cost.Total));
    }

    [Fact]
    public void The_order_in_which_endpoints_are_written_does_not_matter() => Gen.Select(Gen.Int[1, 6], Gen.Int[1, 4], Gen.Int[1, 3]).Sample(
        (phones, points, plain) =>
        {
            var job = ShippedJobs.Text(Text(phones, points, plain, 0));
            var turned = job with { Survey = job.Survey with { Endpoints = [.. job.Survey.Endpoints.Reverse()] } };
            var (one, two) = (Planner.Propose(job, ShippedJobs.Catalogue, Request with { OnlyCheapest = true }), Planner.Propose(turned, ShippedJobs.Catalogue, Request with { OnlyCheapest = true }));
            Assert.Equal(one.Proposals[0].Cost.Total, two.Proposals[0].Cost.Total);
        },
        iter: Long.Samples(60), threads: 1);

    [Fact]
    public void Another_endpoint_of_any_kind_never_costs_less() => Gen.Select(Gen.Int[1, 7], Gen.Int[1, 4], Gen.Int[1, 3], Gen.Int[0, 2]).Sample(
        (phones, points, plain, more) =>
        {
            var before = Planner.Propose(ShippedJobs.Text(Text(phones, points, plain, 0)), ShippedJobs.Catalogue, Request with { OnlyCheapest = true }).Proposals[0];
            var after = Planner.Propose(ShippedJobs.Text(Text(phones + (more == 0 ? 1 : 0), points + (more == 1 ? 1 : 0), plain + (more == 2 ? 1 : 0), 0)), ShippedJobs.Catalogue, Request with { OnlyCheapest = true }).Proposals[0];
            Assert.True(after.Cost.Total >= before.Cost.Total, $"{before.Bought} {before.Cost.Total}, with one more {after.Bought} {after.Cost.Total}");
        },
        iter: Long.Samples(60), threads: 1);

    [Fact]
    public void Cords_stay_where_they_are_on_a_switch_that_stays()
    {
        var drops = string.Join('\n', Enumerable.Range(1, 5).Select(i => $"    D-{i}: {{from: cupboard, to: office, length: {10 + i} m, cable: cat6-23}}"));
        var ends = string.Join('\n', Enumerable.Range(1, 5).Select(i => $"    phone-{i}: {{model: pipit, drop: D-{i}}}"));
        var job = ShippedJobs.Text($$$"""
            headroom: 1
            job: Corner shop
            survey:
              spaces:
                office: {size: 6 x 5 x 2.6 m}
                cupboard: {size: 2 x 1 x 2.4 m}
              drops:
            {{{drops}}}
              endpoints:
            {{{ends}}}
            designs:
              now:
                switches: {sw-1: {model: tarn, in: cupboard}}
                patch:
                  D-1: sw-1/4
                  D-2: sw-1/2
                  D-3: sw-1/6
            """);
        var plan = Planner.Propose(job, ShippedJobs.Catalogue, Request with { OnlyCheapest = true, Pins = new() { Keep = ["sw-1"] } });
        Assert.Equal(0, plan.Proposals[0].Moved);
        Assert.Contains(plan.Proposals[0].Design.Patch, patch => patch.What == "D-1" && patch.To.Port == 4);
        // Where cords may move they are given out anew, from the first port on, at the same cost.
        var moved = Planner.Propose(job, ShippedJobs.Catalogue, Request with { OnlyCheapest = true, Pins = new() { Keep = ["sw-1"], MoveCords = true } }).Proposals[0];
        Assert.Equal(plan.Proposals[0].Cost.Total, moved.Cost.Total);
        Assert.Equal([1, 2, 3, 4, 5], moved.Design.Patch.OrderBy(patch => patch.What, StringComparer.Ordinal).Select(patch => patch.To.Port));
        Assert.Equal(2, moved.Moved);
    }

    [Fact]
    public void Pins_that_clash_are_named()
    {
        var job = ShippedJobs.Text(TwoKinds);
        string Told(PlanPins pins) => string.Join('\n', Planner.Propose(job, ShippedJobs.Catalogue, Request with { Pins = pins }).Complaints);
        Assert.Contains("only whitebeam may be used, but it has a fan", Told(new() { Models = ["whitebeam"], Fanless = true }), StringComparison.Ordinal);
        Assert.Contains("the client has a tarn, but only vetch", Told(new() { Models = ["vetch"], Owned = new Dictionary<string, int> { ["tarn"] = 1 } }), StringComparison.Ordinal);
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

    private static string Text(int phones, int points, int plain, int reserve) => $$$"""
        headroom: 1
        job: Corner shop
        policy: {reserve: {power: {{{10 * reserve}}} %}}
        survey:
          endpoints:
            {{{(phones > 0 ? $"{phones} x pipit:" : "1 x token:")}}}
            {{{(points > 0 ? $"{points} x bulrush:" : "1 x recorder:")}}}
            {{{(plain > 0 ? $"{plain} x workstation:" : "1 x printer:")}}}
        """;

    private static Headroom.Domain.Catalogues.Catalogue Few(string[] models) => ShippedJobs.Catalogue with
    {
        Switches = models.ToDictionary(id => id, id => ShippedJobs.Catalogue.Switches[id] with { SettingsOffered = [.. ShippedJobs.Catalogue.Switches[id].SettingsOffered.Where(by => by != Headroom.Domain.Jobs.ReservesBy.PortLimit)] }),
        Injectors = new Dictionary<string, Headroom.Domain.Catalogues.InjectorModel>(),
    };
}

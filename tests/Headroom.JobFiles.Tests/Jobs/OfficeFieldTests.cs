using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Tests.Jobs;

/// <summary>What can be said of racks, offers and addresses. All of it is invented.</summary>
public sealed class OfficeFieldTests
{
    private static Loaded<Job> Load(string rest) =>
        JobFile.Parse($"headroom: 1\njob: x\nsurvey:\n  spaces: {{a: {{}}, b: {{}}}}\n{rest}", "job.yaml", CatalogueFiles.ReadShipped().Value!);

    private static Job Read(string rest)
    {
        var loaded = Load(rest);
        Assert.True(loaded.Ok, string.Join('\n', loaded.Findings));
        return loaded.Value!;
    }

    [Fact]
    public void A_rack_says_its_door_fixing_and_outlets_and_what_is_in_it()
    {
        var survey = Read("  racks: {A: {in: a, front: 2.5 in, fixed: wall, fixing load: 110 lb, outlets: 3}}\n  fittings: {p-1..p-2: {kind: panel, in: A, height: 1 U, places: 24}}\n").Survey;
        var rack = Assert.Single(survey.Racks);
        Assert.Equal((0.0635, "wall", 3), (Math.Round(rack.Front!.Value.Value, 6), rack.Fixed, rack.Outlets));
        Assert.Equal(49.9, rack.FixingLoad!.Value.Value, 0.05);
        Assert.Equal(["p-1", "p-2"], survey.Fittings.Select(fitting => fitting.Id));
    }

    [Fact]
    public void A_design_takes_over_fittings_and_takes_one_away()
    {
        var job = Read("  racks: {A: {in: a}}\ndesigns:\n  one: {fittings: {m: {kind: manager, in: A}, s: {kind: shelf, in: A}}}\n  two: {like: one, fittings: {m: none}}\n");
        Assert.Equal(["s"], DesignLineage.Whole(job, "two")!.Fittings.Select(fitting => fitting.Id));
    }

    [Fact]
    public void An_offer_is_read_with_its_taxes_tasks_and_lines()
    {
        var money = Read("money: {margin: 28 %, tax: {standard: 19 %, free: 0 %}, ties: even, tax by: line, labour: {tasks: {drop: 20 / 35.5 / 70 min}, difficulty: 0.9/1/1.4}, lines: [{what: skip, count: 2, cost: 90 EUR, option: later}]}\n").Money!;
        Assert.Equal((TieRule.Even, true, 2), (money.Ties, money.TaxByLine, money.Taxes.Count));
        Assert.Equal((20m, 35.5m, 70m), (money.Labour!.Tasks["drop"].Low, money.Labour.Tasks["drop"].Likely, money.Labour.Tasks["drop"].High));
        Assert.Equal(("skip", 2, "later"), (money.Lines[0].What, money.Lines[0].Count, money.Lines[0].Option));
    }

    [Fact]
    public void Addresses_are_read_with_what_is_kept_clear()
    {
        var plan = Read("  addresses: {from: 10.4.0.0/22, elsewhere: 10.4.2.0/24, six: 'fd4c:12::/48', subnets: {guests: {vlan: 60, visitors: {an hour: 9, stay: 45 min, lease: 1 h}}}}\n").Survey.Addresses!;
        Assert.Equal(("10.4.0.0/22", "10.4.2.0/24", "fd4c:12::/48"), (plan.From!.Value.ToString(), plan.Elsewhere[0].Value.ToString(), plan.Six!.Value.ToString()));
        Assert.Equal(2700, plan.Subnets[0].Visitors!.Stay.Value.Value);
    }

    [Theory]
    [InlineData("  addresses: {from: 10.4.0.1/22}", "JOB009", "from of addresses is '10.4.0.1/22'", "'10.4.0.0/22'")]
    [InlineData("  addresses: {from: 10.4/22}", "JOB009", "from of addresses is '10.4/22'", "four numbers")]
    [InlineData("  addresses: {from: 0.0.0.0/0}", "JOB010", "from of addresses is '0.0.0.0/0'", "correct the prefix")]
    [InlineData("  addresses: {six: 'fd4c::/80'}", "JOB010", "six of addresses is 'fd4c::/80'", "correct the prefix")]
    [InlineData("  addresses: {subnets: {a1: {vlan: 4095}}}", "JOB010", "vlan of subnet a1 of addresses is '4095'", "correct it")]
    [InlineData("money: {budget: -5 EUR}", "JOB009", "budget of money is '-5 EUR'", "write it like")]
    [InlineData("money: {lines: [{what: x, price: -1 EUR}]}", "JOB009", "price of line 1 of money is '-1 EUR'", "write it like")]
    [InlineData("money: {margin: 95 %}", "JOB010", "margin of money is '95 %'", "correct it")]
    [InlineData("money: {labour: {tasks: {drop: 70 / 35 / 20 min}}}", "JOB013", "task drop", "the smallest first")]
    [InlineData("money: {labour: {tasks: {drop: 20 / 35 / 70}}}", "JOB006", "task drop", "write it like")]
    [InlineData("money: {labour: {tasks: {drop: 20 / 35 min}}}", "JOB009", "task drop", "write it like")]
    [InlineData("money: {labour: {difficulty: 1 / 1.2 / 9}}", "JOB010", "difficulty of labour", "correct it")]
    public void A_slip_says_where_what_the_range_and_what_to_do(string text, string code, string given, string advice)
    {
        var finding = Assert.Single(Load(text + "\n").Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(code, finding.Code);
        Assert.Contains(given, finding.Given, StringComparison.Ordinal);
        Assert.Contains(advice, finding.Advice, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Allowed);
    }
}

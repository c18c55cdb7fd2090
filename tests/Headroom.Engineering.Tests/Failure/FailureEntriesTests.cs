using Headroom.Domain.Ledgers;
using Headroom.Engineering.Failure;
using Headroom.Engineering.Tests.Traffic;

namespace Headroom.Engineering.Tests.Failure;

public sealed class FailureEntriesTests
{
    private const string Endpoints = "ap-1: {model: cell}\nap-2: {model: cell}\nap-3: {model: cell}\nt-1: {model: tower}";

    private const string Design = "switches: {sw-1: {model: box, fed-by: ups}, sw-2: {model: box}}, standby: {ups: {model: block}}, "
        + "uplinks: [{from: sw-1/8, to: line}, {from: sw-2/8, to: sw-1/7}], patch: {ap-1: sw-1/1, ap-2: sw-2/1, ap-3: sw-2/2, t-1: sw-2/3}";

    private static Ledger Study(string outage, string design = Design, string lines = "lines: {line: {down: 300 Mb/s, up: 100 Mb/s, works: 99.9 %}}") =>
        NetworkJob.Study(Endpoints, design, lines, $"policy: {{failures: {{{outage}}}}}");

    [Theory]
    [InlineData("sw-1", 4)]
    [InlineData("sw-2", 3)]
    [InlineData("ups", 4)]
    [InlineData("line", 4)]
    [InlineData("sw-2 to sw-1", 3)]
    public void What_fails_takes_what_hangs_on_it_and_what_is_behind(string subject, int lost) =>
        Assert.Equal(lost, Study("most dark: 3").The($"failure/{subject}/dark").Demand);

    [Fact]
    public void Without_power_and_cut_off_are_told_apart()
    {
        var entry = Study("most dark: 3").The("failure/sw-1/dark");
        var work = entry.Story.Work(entry);
        Assert.Equal((1, 3), (work.Steps[0].Value, work.Steps[1].Value));
        Assert.Equal(Verdict.Short, entry.Verdict);
    }

    [Fact]
    public void A_bundle_is_no_single_point_of_failure() => Assert.False(
        Study("most dark: 3", Design.Replace("{from: sw-2/8, to: sw-1/7}", "{from: sw-2/8, to: sw-1/7}, {from: sw-2/7, to: sw-1/6}", StringComparison.Ordinal)).Holds("failure/sw-2 to sw-1/dark"));

    [Fact]
    public void A_second_line_at_the_other_switch_keeps_it_on() => Assert.Equal(
        1,
        Study("most dark: 3", Design.Replace("uplinks: [", "uplinks: [{from: sw-2/6, to: line-2}, ", StringComparison.Ordinal), "lines: {line: {}, line-2: {}}").The("failure/sw-1/dark").Demand);

    [Fact]
    public void Where_the_house_sets_no_limit_it_is_told_and_not_judged()
    {
        var ledger = NetworkJob.Study(Endpoints, Design);
        Assert.DoesNotContain(ledger.Entries, entry => entry.Discipline == "failure");
        Assert.Equal(4, ledger.Figures.Single(figure => figure.Id == "failure/sw-1/lost-with-it").Value);
    }

    [Fact]
    public void One_supply_is_short_of_one_that_may_fail()
    {
        var ledger = Study("a supply may fail: yes");
        var entry = ledger.The("failure/sw-1/supplies");
        Assert.Equal((Verdict.Short, 1, 0), (entry.Verdict, entry.Demand, entry.Limit));
        Assert.NotEmpty(entry.Cautions);
        Assert.Equal("sw-1 has one supply and stops when it fails; one must be able to fail.", entry.Story.Say(entry));
        // Of watts with one lost there is nothing to say where there is but one.
        Assert.False(ledger.Holds("failure/sw-1/one-lost"));
        Assert.False(Study("most dark: 3").Holds("failure/sw-1/supplies"));
    }

    [Fact]
    public void Hours_lost_are_those_of_all_that_an_endpoint_hangs_on()
    {
        var ledger = Study("lost in a year: 20 h, repair: 10 h");
        var (unit, ups, line) = (Availability.Of(200_000, 10), Availability.Of(100_000, 10), 0.999);
        Assert.Equal(8760 * (1 - unit * ups * line), ledger.The("failure/ap-1/lost").Demand!.Value, 9);
        Assert.Equal(8760 * (1 - unit * unit * ups * line), ledger.The("failure/ap-2/lost").Demand!.Value, 9);
        Assert.Equal(Verdict.Clear, ledger.The("failure/ap-2/lost").Verdict);
    }

    [Fact]
    public void A_part_of_which_nothing_is_known_is_asked_for_unless_the_rest_is_too_much_already()
    {
        const string bare = "lines: {line: {down: 300 Mb/s, up: 100 Mb/s}}";
        var entry = Study("lost in a year: 20 h", lines: bare).The("failure/ap-1/lost");
        Assert.Equal(Verdict.Unknown, entry.Verdict);
        Assert.StartsWith("how long does line last", entry.Question, StringComparison.Ordinal);
        Assert.Equal(Verdict.Short, Study("lost in a year: 1 h", lines: bare).The("failure/ap-1/lost").Verdict);
    }

    [Fact]
    public void The_time_to_mend_that_just_keeps_the_limit_keeps_it()
    {
        var entry = Study("lost in a year: 12 h, repair: 10 h").The("failure/ap-2/lost");
        var turn = Assert.Single(entry.Story.Holds(entry));
        var again = Study($"lost in a year: 12 h, repair: {turn.AtLimit!.Value.ToString("F6", System.Globalization.CultureInfo.InvariantCulture)} h").The("failure/ap-2/lost");
        Assert.Equal(12, again.Demand!.Value, 0.02);
    }

    [Fact]
    public void Every_story_has_working_and_source() => Assert.All(Study("most dark: 3, lost in a year: 1 h").Entries.Where(entry => entry.Discipline == "failure"), entry =>
    {
        Assert.NotEqual("", entry.Story.Work(entry).Source);
        Assert.NotEmpty(entry.Story.Holds(entry));
        Assert.EndsWith(".", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.True(entry.What.Length <= 24);
    });

    private static readonly Gen<(double One, double Other, double Common)> Shares = Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1]);

    [Fact]
    public void Things_in_a_row_are_never_better_than_the_worst_and_side_by_side_never_worse() => Shares.Sample(s =>
        Availability.InARow([s.One, s.Other]) <= Math.Min(s.One, s.Other) + 1e-15 && Availability.SideBySide(s.One, s.Common) >= s.One - 1e-12);

    [Fact]
    public void When_every_failure_is_common_two_are_as_good_as_one_and_more_common_is_never_better() => Shares.Sample(s =>
        Math.Abs(Availability.SideBySide(s.One, 1) - s.One) < 1e-12 && Availability.SideBySide(s.One, Math.Min(1, s.Common + 0.1)) <= Availability.SideBySide(s.One, s.Common) + (1 - s.One > 0.5 ? 1 : 1e-12));
}

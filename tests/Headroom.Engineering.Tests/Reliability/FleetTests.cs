using Headroom.Domain.Ledgers;
using Headroom.Engineering.Reliability;
using Headroom.Engineering.Tests.Traffic;

namespace Headroom.Engineering.Tests.Reliability;

public sealed class FleetTests
{
    private static Ledger Study(string rows) => NetworkJob.Study("ap-1: {model: cell}", "switches: {sw-1: {model: box}}, patch: {ap-1: sw-1/1}", top: $"fleet: [{rows}]");

    [Fact]
    public void A_shelf_is_judged_by_what_is_believed_of_the_model()
    {
        var entry = Study("{model: box, units: 120, service: 2102400 h, failed: 3, spares: 2, supplier: 30 d}").The("reliability/box/spares");
        // Half of the catalogue's 200 000 h is worth one failure; 3 more in 2 102 400 h.
        var belief = new RateBelief(4, 2_202_400);
        Assert.Equal(SpareParts.Needed(belief, 120 * 30 * 24, 0.95), entry.Demand);
        Assert.Equal(Verdict.Clear, entry.Verdict);
        var units = entry.Story.Holds(entry)[0].AtLimit!.Value;
        Assert.True(SpareParts.Enough(belief, units * 720, 2) >= 0.95 && SpareParts.Enough(belief, (units + 1) * 720, 2) < 0.95);
    }

    [Fact]
    public void An_empty_shelf_is_short_where_one_is_wanted() => Assert.Equal(
        Verdict.Short, Study("{model: box, units: 120, service: 2102400 h, failed: 3, spares: 0, supplier: 30 d}").The("reliability/box/spares").Verdict);

    [Theory]
    [InlineData("{model: box, spares: 1, supplier: 30 d}", "how many are in service")]
    [InlineData("{model: box, units: 9, spares: 1}", "how long until a new one comes")]
    [InlineData("{model: plain, units: 9, spares: 1, supplier: 30 d}", "how often does it fail")]
    [InlineData("{model: box, units: 9, supplier: 30 d}", "how many lie on the shelf")]
    public void What_is_missing_is_asked_for(string row, string question)
    {
        var entry = Study(row).Entries.Single(entry => entry.Discipline == "reliability");
        Assert.Equal(Verdict.Unknown, entry.Verdict);
        Assert.StartsWith(question, entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Few_failures_are_not_enough_data() => Assert.Contains(
        Study("{model: box, service: 100000 h, failed: 3}, {model: plain, service: 90000 h, failed: 0}").Answers, answer => answer.Text.StartsWith("Not enough data: 3 failures", StringComparison.Ordinal));

    [Fact]
    public void A_cause_that_both_share_is_taken_apart_and_marked_as_looked_for_afterwards()
    {
        var answer = Study("{model: box, service: 120 years, failed: 9, hot service: 90 years, hot failed: 8}, {model: plain, service: 160 years, failed: 2, hot service: 20 years, hot failed: 1}")
            .Answers.Single(answer => answer.Question.EndsWith("than plain?", StringComparison.Ordinal));
        Assert.StartsWith("Yes", answer.Text, StringComparison.Ordinal);
        Assert.Contains("the places may be all there is to it", answer.Text, StringComparison.Ordinal);
        Assert.Contains("looked for afterwards", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Unlike_things_are_not_compared() => Assert.DoesNotContain(
        Study("{model: box, service: 100000 h, failed: 3}, {model: block, service: 90000 h, failed: 9}").Answers, answer => answer.Question.Contains("than block", StringComparison.Ordinal));

    [Fact]
    public void Without_a_fleet_there_is_nothing() => Assert.DoesNotContain(
        NetworkJob.Study("ap-1: {model: cell}", "switches: {sw-1: {model: box}}, patch: {ap-1: sw-1/1}").Figures, figure => figure.Id.StartsWith("reliability/", StringComparison.Ordinal));

    private static readonly Gen<(FieldRecord One, FieldRecord Other)> Pairs = Gen.Select(Gen.Int[0, 30], Gen.Double[100, 1e6], Gen.Int[0, 30], Gen.Double[100, 1e6])
        .Select((a, t, b, u) => (new FieldRecord(a, t), new FieldRecord(b, u)));

    [Fact]
    public void Which_fails_more_adds_up_to_certainty_and_the_test_looks_the_same_from_both_sides() => Pairs.Sample(p =>
        Math.Abs(RateComparison.FailsMore(p.One, p.Other) + RateComparison.FailsMore(p.Other, p.One) - 1) < 1e-9
        && Math.Abs(RateComparison.TwoSided(p.One, p.Other) - RateComparison.TwoSided(p.Other, p.One)) < 1e-9);

    [Fact]
    public void One_stratum_by_itself_is_the_plain_test() => Pairs.Where(p => p.One.Failures + p.Other.Failures > 0).Sample(p =>
        Math.Abs(RateComparison.TwoSidedWithin([(p.One, p.Other)])!.Value - RateComparison.TwoSided(p.One, p.Other)) < 1e-9);

    [Fact]
    public void What_is_believed_lies_between_its_own_limits_and_grows_with_failures() => Gen.Select(Gen.Int[0, 40], Gen.Double[1e3, 1e7]).Sample((failures, hours) =>
    {
        var (now, more) = (FieldRate.FromNothing(failures, hours), FieldRate.FromNothing(failures + 1, hours));
        return FieldRate.RateQuantile(now, 0.05) < now.MeanRate && now.MeanRate < FieldRate.RateQuantile(now, 0.975) && FieldRate.RateQuantile(more, 0.5) > FieldRate.RateQuantile(now, 0.5);
    });

    [Fact]
    public void Spares_by_belief_go_over_into_those_of_a_known_rate_as_failures_pile_up() => Gen.Select(Gen.Double[0.1, 8], Gen.Int[0, 12]).Sample((expected, spares) =>
        Math.Abs(SpareParts.Enough(new RateBelief(1e6, 1e9), expected * 1e3, spares) - SpareParts.Enough(expected, spares)) < 1e-4);

    [Fact]
    public void The_spares_needed_are_enough_and_one_fewer_is_not() => Gen.Select(Gen.Double[0.01, 300], Gen.Double[0.5, 0.999]).Sample((expected, target) =>
    {
        var needed = SpareParts.Needed(expected, target);
        return SpareParts.Enough(expected, needed) >= target && (needed == 0 || SpareParts.Enough(expected, needed - 1) < target);
    });

    [Fact]
    public void A_soak_pays_only_where_new_ones_fail_more_often() => Gen.Select(Gen.Double[0.2, 0.95], Gen.Double[1e5, 1e7], Gen.Double[1, 500]).Sample((shape, scale, soak) =>
        EarlyLife.FirstYearAfter(shape, scale, soak) < EarlyLife.FirstYearAfter(shape, scale, 0)
        && Math.Abs(EarlyLife.FirstYearAfter(1, scale, soak) - EarlyLife.FirstYearAfter(1, scale, 0)) < 1e-9);
}

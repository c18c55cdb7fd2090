using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Acceptance;
using Headroom.Engineering.Tests.Studies;

namespace Headroom.Engineering.Tests.Acceptance;

/// <summary>Records of a cable tester beside a schedule of six drops, K-01 to K-06; all figures are invented.</summary>
public sealed class AcceptanceStudyTests
{
    private const string Link = "Cat 6 permanent link";

    private static Site Six => Enumerable.Range(1, 6).Aggregate(
        new Site().Switch("sw-1", 200).Model(Site.Device("ap", 4, 6, 9, 7)), (site, i) => site.Put($"0{i}", "ap", $"sw-1/{i}"));

    private static TesterResult Record(string label, TesterVerdict verdict = TesterVerdict.Pass, string limit = Link, double? metres = null, double? margin = null, string? day = null, params double[] loops) =>
        new(label, verdict, limit, metres, margin, day, [.. loops.Zip(["1-2", "3-6", "4-5", "7-8"], (ohms, pair) => KeyValuePair.Create(pair, ohms))], Place.None);

    private static AcceptanceResult Of(params TesterResult[] records) => AcceptanceStudy.Of(Six.Job, Six.Catalogue, records, Link);

    private static DropAcceptance One(string id, params TesterResult[] records) => Of(records).Drops.Single(drop => drop.Id == id);

    [Fact]
    public void A_pass_against_the_agreed_limit_is_accepted() => Assert.Equal(DropStanding.Accepted, One("K-01", Record("K-01")).Standing);

    [Fact]
    public void A_starred_pass_is_marginal() => Assert.Equal(DropStanding.Marginal, One("K-01", Record("K-01", TesterVerdict.Marginal)).Standing);

    [Fact]
    public void A_fail_is_open() => Assert.Equal(OpenReason.Failed, One("K-01", Record("K-01", TesterVerdict.Fail)).Reason);

    [Fact]
    public void A_fail_that_passed_later_is_accepted_and_both_records_are_kept()
    {
        var drop = One("K-01", Record("K-01", TesterVerdict.Pass, day: "2026-11-15"), Record("K-01", TesterVerdict.Fail, day: "2026-11-14"));
        Assert.Equal((DropStanding.Accepted, 2, true), (drop.Standing, drop.Records.Count, drop.Retested));
    }

    [Fact]
    public void Another_limit_is_open() => Assert.Equal(OpenReason.WrongLimit, One("K-01", Record("K-01", limit: "Cat 5e permanent link")).Reason);

    [Fact]
    public void A_permanent_link_tested_as_a_channel_is_open() => Assert.Equal(OpenReason.ChannelForLink, One("K-01", Record("K-01", limit: "Cat 6 channel")).Reason);

    [Theory]
    [InlineData(90.0, OpenReason.None)]
    [InlineData(90.1, OpenReason.TooLong)]
    public void Longer_than_a_permanent_link_may_be_is_open_though_passed(double metres, OpenReason reason) =>
        Assert.Equal(reason, One("K-01", Record("K-01", metres: metres, margin: 2)).Reason);

    [Fact]
    public void A_label_that_is_nearly_one_is_asked_about_and_never_taken_for_it()
    {
        var result = Of(Record("k-1"), Record("K-02 "), Record("R-9"));
        Assert.Equal("K-01", result.Strange[0].Near);
        Assert.Null(result.Strange[2].Near);
        Assert.Equal(OpenReason.Missing, result.Drops[0].Reason);
        Assert.Contains("is 'k-1' meant?", result.Drops[0].Told, StringComparison.Ordinal);
        Assert.Equal(0, result.Count(DropStanding.Accepted));
    }

    [Fact]
    public void Two_labels_with_the_same_length_and_margin_are_both_open()
    {
        var result = Of(Record("K-01", metres: 27.2, margin: 4.4), Record("K-02", metres: 27.2, margin: 4.4), Record("K-03", metres: 27.2, margin: 4.5));
        Assert.Equal([OpenReason.Twin, OpenReason.Twin, OpenReason.None], result.Drops.Take(3).Select(drop => drop.Reason));
    }

    [Fact]
    public void A_record_saved_twice_counts_once()
    {
        var result = Of(Record("K-01", metres: 27, margin: 4, day: "2026-11-14"), Record("K-01", metres: 27, margin: 4, day: "2026-11-14"));
        Assert.Single(result.SavedTwice);
        Assert.Equal((DropStanding.Accepted, 1), (result.Drops[0].Standing, result.Drops[0].Records.Count));
    }

    [Fact]
    public void Resistances_that_differ_tell_the_pair_and_what_to_do()
    {
        var drop = One("K-01", Record("K-01", metres: 30, margin: 4, loops: [5.6, 5.5, 7.9, 5.6]));
        Assert.Contains(drop.Pairs, text => text.Contains("4-5", StringComparison.Ordinal));
        Assert.Empty(One("K-01", Record("K-01", metres: 30, margin: 4, loops: [5.6, 5.5, 5.6, 5.6])).Pairs);
    }

    [Fact]
    public void When_nobody_says_the_limit_the_commonest_is_taken_and_told()
    {
        var result = AcceptanceStudy.Of(Six.Job, Six.Catalogue, [Record("K-01"), Record("K-02"), Record("K-03", limit: "Cat 6A permanent link")], null);
        Assert.Equal((Link, true), (result.Limit, result.LimitAssumed));
        Assert.Equal(OpenReason.WrongLimit, result.Drops[2].Reason);
    }

    private static Gen<string> Of(params string[] words) => Gen.Int[0, words.Length - 1].Select(at => words[at]);

    private static readonly Gen<TesterResult> AnyRecord = Gen.Select(
        Of("K-01", "K-02", "K-03", "k-04", "K-5", "K-06", "X"), Gen.Enum<TesterVerdict>(), Of(Link, "Cat 6 channel", "Cat 5e permanent link"), Gen.Int[1, 4], Gen.Int[1, 3],
        (label, verdict, limit, metres, margin) => Record(label, verdict, limit, metres * 30, margin));

    [Fact]
    public void Accepted_marginal_and_open_add_up_to_the_schedule_and_no_record_is_lost() => AnyRecord.Array[1, 20].Sample(records =>
    {
        var result = Of(records);
        return result.Count(DropStanding.Accepted) + result.Count(DropStanding.Marginal) + result.Count(DropStanding.Open) == 6
            && result.Drops.Sum(drop => drop.Records.Count) + result.Strange.Count + result.SavedTwice.Count == records.Length;
    }, iter: 200);
}

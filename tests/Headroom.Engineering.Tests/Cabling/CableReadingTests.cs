using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>Readings of cables beside what was expected; all figures are invented.</summary>
public sealed class CableReadingTests
{
    private static Ledger Read(params string[] readings) => CableJob.Study(
        "K-1: {from: closet, to: room, length: 60 m, cable: plain}\nK-2: {from: closet, to: room, cable: plain}",
        rest: "designs: {d: {switches: {sw-1: {model: box}}}}\nreadings:\n" + string.Join('\n', readings.Select(reading => $"  - {{{reading}, with: tester, on: 2026-11-14}}")));

    private static string Ohms(string pair, double ohms) => FormattableString.Invariant($"what: ohms, at: K-1, value: {ohms} ohm, pair: {pair}");

    [Fact]
    public void A_measured_length_governs_and_answers_what_was_unknown()
    {
        var ledger = Read("what: length, at: K-1, value: 92 m", "what: length, at: K-2, value: 41 m");
        Assert.Equal(Verdict.Short, ledger.Entry("K-1/length").Studied);
        Assert.Contains("coil", ledger.Entry("K-1/length").Measured[0].Finding, StringComparison.Ordinal);
        var answered = ledger.Entry("K-2/length");
        Assert.Equal((Verdict.Clear, null, 41), (answered.Studied, answered.Question, answered.Demand));
    }

    [Fact]
    public void The_highest_pair_governs_the_ohms_whatever_the_order()
    {
        foreach (var order in new[] { new[] { Ohms("1-2", 10.1), Ohms("4-5", 22.0) }, [Ohms("4-5", 22.0), Ohms("1-2", 10.1)] })
        {
            var entry = Read(order).Entry("K-1/loop");
            Assert.Equal((Verdict.Short, 22.0), (entry.Studied, entry.Demand));
        }
    }

    [Fact]
    public void One_pair_above_its_neighbours_is_to_be_terminated_anew()
    {
        var entry = Read(Ohms("1-2", 10.1), Ohms("3-6", 10.2), Ohms("4-5", 12.1), Ohms("7-8", 10.0)).Entry("K-1/pair-unbalance");
        Assert.Equal((12.1 - 10.0) / 4, entry.Demand!.Value, 1e-9);
        Assert.Equal(0.07 * (12.1 + 10.0) / 4, entry.Limit!.Value, 1e-9);
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("pair 4-5 is 2 Ω above its neighbours", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Equal("terminate pair 4-5 anew and read it again", Assert.Single(entry.Advice));
    }

    [Fact]
    public void All_pairs_above_what_length_and_gauge_give_point_to_the_cable()
    {
        var entry = Read(Ohms("1-2", 15.9), Ohms("3-6", 16.1), Ohms("4-5", 16.0), Ohms("7-8", 16.2)).Entry("K-1/pair-unbalance");
        Assert.Equal(Verdict.Clear, entry.Studied);
        Assert.Contains("copper-clad", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.25, "clear")]
    [InlineData(0.4, "short")]
    public void Within_a_pair_three_per_cent_or_a_fifth_of_an_ohm_is_allowed(double difference, string verdict)
    {
        var entry = Read(FormattableString.Invariant($"what: unbalance, at: K-1, value: {difference} ohm, pair: 3-6")).Entry("K-1/unbalance");
        Assert.Equal(0.03 * 2 * 60 * 0.084215, entry.Limit!.Value, 0.0005);
        Assert.Equal(verdict, entry.Studied.ToString().ToLowerInvariant());
    }

    [Fact]
    public void One_pair_alone_says_nothing_of_the_difference_between_pairs() => Assert.False(Read(Ohms("1-2", 10.1)).Has("K-1/pair-unbalance"));

    [Fact]
    public void Readings_of_cables_are_not_loose() =>
        Assert.Empty(Read(Ohms("1-2", 10.1), "what: length, at: K-1, value: 61 m", "what: unbalance, at: K-1, value: 0.1 ohm, pair: 1-2").LooseReadings);
}

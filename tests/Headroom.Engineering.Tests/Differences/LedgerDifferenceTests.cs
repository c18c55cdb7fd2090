using Headroom.Domain.Ledgers;
using Headroom.Engineering.Differences;

namespace Headroom.Engineering.Tests.Differences;

public sealed class LedgerDifferenceTests
{
    private static readonly Ledger One = TwoDesigns.Study(TwoDesigns.Job(), "first");

    [Fact]
    public void A_ledger_does_not_differ_from_itself()
    {
        var difference = LedgerDifference.Of(One, One);
        Assert.Empty(difference.Verdicts);
        Assert.Empty(difference.Much);
        Assert.Empty(difference.OnlyBefore);
        Assert.Empty(difference.OnlyAfter);
        Assert.Equal(One.Entries.Count, difference.Same);
    }

    [Fact]
    public void Entries_that_one_ledger_lacks_stand_by_themselves()
    {
        var fewer = One with { Entries = [.. One.Entries.Skip(2)] };
        Assert.Equal(One.Entries.Take(2), LedgerDifference.Of(One, fewer).OnlyBefore);
        Assert.Equal(One.Entries.Take(2), LedgerDifference.Of(fewer, One).OnlyAfter);
    }

    [Fact]
    public void Verdicts_that_change_come_worst_first_and_are_not_told_twice()
    {
        var (first, second, third) = (One.Entries[0], One.Entries[1], One.Entries[2]);
        var before = Of(first with { Studied = Verdict.Short }, second with { Studied = Verdict.Clear }, third with { Studied = Verdict.Clear });
        var after = Of(first with { Studied = Verdict.Clear, Demand = -1e6 }, second with { Studied = Verdict.Tight }, third with { Studied = Verdict.Short });
        var difference = LedgerDifference.Of(before, after);
        Assert.Equal([third.Id, second.Id, first.Id], difference.Verdicts.Select(change => change.After.Id));
        Assert.Empty(difference.Much);
    }

    [Theory]
    [InlineData(9.9, 0)]
    [InlineData(10, 1)]
    [InlineData(-10, 1)]
    public void Much_is_a_tenth_of_the_limit(double more, int count)
    {
        var entry = One.Entries[0] with { Demand = 50, Limit = 100, Studied = Verdict.Clear };
        Assert.Equal(count, LedgerDifference.Of(Of(entry), Of(entry with { Demand = 50 - more })).Much.Count);
    }

    [Fact]
    public void What_becomes_known_changes_much()
    {
        var entry = One.Entries[0] with { Studied = Verdict.Unknown };
        var difference = LedgerDifference.Of(Of(entry with { Demand = null }), Of(entry with { Demand = 1 }));
        Assert.Equal(entry.Id, Assert.Single(difference.Much).After.Id);
        Assert.Null(difference.Much[0].Moved);
    }

    [Fact]
    public void Every_entry_is_counted_once() => Gen.Select(Gen.Int[0, 3].Array[One.Entries.Count], Gen.Double[0, 2].Array[One.Entries.Count]).Sample((verdicts, factors) =>
    {
        var after = One with
        {
            Entries = [.. One.Entries.Select((entry, at) => entry with { Studied = (Verdict)verdicts[at], Demand = entry.Demand * factors[at] }).Where((_, at) => factors[at] < 1.5)],
        };
        var difference = LedgerDifference.Of(One, after);
        var told = difference.Verdicts.Count + difference.Much.Count + difference.Same;
        Assert.Equal((One.Entries.Count, after.Entries.Count), (told + difference.OnlyBefore.Count, told + difference.OnlyAfter.Count));
    }, iter: Long.Samples(1000));

    private static Ledger Of(params LedgerEntry[] entries) => One with { Entries = entries };
}

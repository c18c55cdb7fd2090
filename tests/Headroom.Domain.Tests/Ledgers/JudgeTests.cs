using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Tests.Ledgers;

public class JudgeTests
{
    private static readonly Reserve Twenty = new(null, 20, "20 W", Origin.Unstated, Place.None);

    [Theory]
    [InlineData(79, Verdict.Clear)]
    [InlineData(80, Verdict.Clear)]
    [InlineData(80.001, Verdict.Tight)]
    [InlineData(100, Verdict.Tight)]
    [InlineData(100.001, Verdict.Short)]
    public void A_demand_is_judged_against_a_limit_of_100_with_20_in_reserve(double demand, Verdict verdict) =>
        Assert.Equal(verdict, Judge.Of(demand, 100, Twenty));

    [Fact]
    public void At_the_limit_without_reserve_is_clear() => Assert.Equal(Verdict.Clear, Judge.Of(100, 100, Reserve.Nothing));

    [Fact]
    public void A_sum_of_tenths_does_not_fail_by_its_last_binary_digit() =>
        Assert.Equal(Verdict.Clear, Judge.Of(0.1 + 0.2, 0.3, Reserve.Nothing));

    [Fact]
    public void Without_demand_or_limit_nothing_is_known()
    {
        Assert.Equal(Verdict.Unknown, Judge.Of(null, 100, Twenty));
        Assert.Equal(Verdict.Unknown, Judge.Of(50, null, Twenty));
    }

    [Theory]
    [InlineData(10, Verdict.Unknown)]
    [InlineData(90, Verdict.Unknown)]
    [InlineData(101, Verdict.Short)]
    public void With_parts_missing_only_what_is_short_already_is_known(double demand, Verdict verdict) =>
        Assert.Equal(verdict, Judge.Of(demand, 100, Twenty, new KnownParts(2, 3)));

    [Fact]
    public void With_all_parts_known_it_is_judged_as_a_whole() =>
        Assert.Equal(Verdict.Clear, Judge.Of(10, 100, Twenty, new KnownParts(3, 3)));

    [Fact]
    public void More_demand_never_judges_better() => Gen.Select(Gen.Double[0, 200], Gen.Double[0, 50], Gen.Double[0, 50])
        .Sample((demand, more, reserve) => Judge.Known(demand + more, 100, reserve) >= Judge.Known(demand, 100, reserve)
            || Judge.Known(demand, 100, reserve) == Verdict.Short);
}

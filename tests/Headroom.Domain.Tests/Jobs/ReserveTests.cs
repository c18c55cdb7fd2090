using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Tests.Jobs;

public class ReserveTests
{
    [Fact]
    public void A_share_is_taken_of_the_limit() => Assert.Equal(24.6, Reserve.Fifth.Of(123), 1e-12);

    [Fact]
    public void A_share_of_a_limit_below_zero_is_still_an_amount_to_keep() => Assert.Equal(2, Reserve.Fifth.Of(-10), 1e-12);

    [Fact]
    public void An_amount_is_the_same_of_every_limit()
    {
        var two = new Reserve(null, 2, "2 V", Origin.Unstated, Place.None);
        Assert.Equal((2.0, 2.0), (two.Of(1), two.Of(1000)));
    }

    [Theory]
    [InlineData("power", 0.2)]
    [InlineData("rack", 0.2)]
    [InlineData("volts", 0)]
    public void Without_a_policy_the_kind_decides(string kind, double share) => Assert.Equal(share, Policy.None.ReserveOf(kind).Of(1), 1e-12);

    [Fact]
    public void A_policy_may_take_the_usual_reserve_away()
    {
        var policy = Policy.None with { Reserves = new Dictionary<string, Reserve> { ["power"] = Reserve.Nothing } };
        Assert.Equal(0, policy.ReserveOf("power").Of(100));
    }

    [Fact]
    public void Kinds_with_a_usual_reserve_are_kinds() => Assert.Subset(Policy.Kinds.Keys.ToHashSet(), Policy.AFifthByDefault.ToHashSet());
}

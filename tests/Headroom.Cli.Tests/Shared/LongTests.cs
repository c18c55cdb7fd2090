namespace Headroom.Cli.Tests.Shared;

public sealed class LongTests
{
    [Fact]
    public void A_short_run_draws_a_tenth_of_the_samples() => Assert.Equal(Long.On ? 1000 : 100, Long.Samples(1000));

    [Fact]
    public void No_run_draws_none() => Assert.Equal(Long.On ? 3 : 1, Long.Samples(3));
}

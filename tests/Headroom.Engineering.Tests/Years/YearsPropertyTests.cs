using Headroom.Engineering.Years;

namespace Headroom.Engineering.Tests.Years;

public sealed class YearsPropertyTests
{
    [Fact]
    public void More_time_never_adds_fewer_devices_and_none_adds_none() => Gen.Select(Gen.Double[0, 2], Gen.Int[0, 50], Gen.Double[0, 10], Gen.Double[0, 10]).Sample((rate, before, years, more) =>
        Rates.AddedByShare(before, rate, 0) == 0 && Rates.AddedByShare(before, rate, years + more) >= Rates.AddedByShare(before, rate, years)
        && Rates.Added(5 * rate, 0) == 0 && Rates.Added(5 * rate, years + more) >= Rates.Added(5 * rate, years));

    [Fact]
    public void Dust_is_never_older_than_the_time_between_two_cleanings() => Gen.Select(Gen.Double[0.01, 20], Gen.Double[0.1, 10]).Sample((years, every) =>
        Rates.SinceCleaning(years, every) is var since && since > 0 && since <= every + 1e-6 && since <= years);
}

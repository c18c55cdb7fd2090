using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Tests.Traffic;

/// <summary>What holds of the sums of traffic, on every input.</summary>
public sealed class TrafficPropertyTests
{
    private static readonly Gen<(int Sources, double Share, int Lines)> Calls = Gen.Select(Gen.Int[1, 60], Gen.Double[0.001, 0.9], Gen.Int[0, 60]);

    [Fact]
    public void What_is_carried_and_what_is_lost_make_up_what_is_offered() => Gen.Select(Gen.Double[0.01, 80], Gen.Int[1, 90]).Sample((erlangs, lines) =>
    {
        // Carried traffic by the states themselves, a second way to the loss.
        var (weights, sum, carried) = (1.0, 1.0, 0.0);
        for (var n = 1; n <= lines; n++)
        {
            weights *= erlangs / n;
            sum += weights;
            carried += n * weights;
        }

        return Math.Abs(carried / sum + erlangs * Trunks.Blocking(erlangs, lines) - erlangs) < 1e-8 * (1 + erlangs);
    });

    [Fact]
    public void One_line_more_never_loses_more_calls() => Calls.Sample(c =>
        Trunks.CallCongestion(c.Sources, c.Share, c.Lines + 1) <= Trunks.CallCongestion(c.Sources, c.Share, c.Lines) + 1e-15);

    [Fact]
    public void Few_sources_never_lose_more_than_many_that_offer_as_much_when_free() => Calls.Where(c => c.Lines > 0).Sample(c =>
        Trunks.CallCongestion(c.Sources, c.Share, c.Lines) <= Trunks.Blocking(c.Sources * c.Share / (1 - c.Share), c.Lines) + 1e-12);

    [Fact]
    public void As_many_lines_as_telephones_lose_nothing() => Calls.Sample(c => Trunks.CallCongestion(c.Sources, c.Share, c.Sources) == 0);

    [Fact]
    public void The_lines_asked_for_keep_the_loss_and_one_fewer_does_not() => Gen.Select(Gen.Int[1, 60], Gen.Double[0.001, 0.9], Gen.Double[0.0005, 0.3]).Sample((sources, share, lost) =>
    {
        var lines = Trunks.LinesFor(sources, share, lost);
        return Trunks.CallCongestion(sources, share, lines) <= lost && (lines == 0 || Trunks.CallCongestion(sources, share, lines - 1) > lost);
    });

    [Fact]
    public void Very_many_sources_lose_what_Erlang_says() => Gen.Select(Gen.Double[0.5, 20], Gen.Int[1, 30]).Sample((erlangs, lines) =>
        Math.Abs(Trunks.CallCongestion(9_999, erlangs / 9_999, lines) - Trunks.Blocking(erlangs, lines)) < 0.002);

    [Fact]
    public void The_traffic_that_lines_carry_brings_back_the_loss() => Gen.Select(Gen.Int[1, 100], Gen.Double[0.001, 0.5]).Sample((lines, lost) =>
        Math.Abs(Trunks.Blocking(Trunks.Erlangs(lines, lost), lines) - lost) < 1e-9);

    [Fact]
    public void The_quantile_of_active_users_is_the_first_that_is_enough() => Gen.Select(Gen.Int[0, 400], Gen.Double[0, 1], Gen.Double[0.5, 0.9999]).Sample((users, share, certainty) =>
    {
        var at = ActiveUsers.Quantile(users, share, certainty);
        return ActiveUsers.MoreThan(users, share, at) <= 1 - certainty && (at == 0 || ActiveUsers.MoreThan(users, share, at - 1) > 1 - certainty);
    });

    [Fact]
    public void More_users_are_never_fewer_at_once() => Gen.Select(Gen.Int[0, 2000], Gen.Double[0, 1]).Sample((users, share) =>
        ActiveUsers.Quantile(users + 1, share, 0.999) >= ActiveUsers.Quantile(users, share, 0.999));

    [Fact]
    public void Nobody_and_everybody_are_the_ends() => Gen.Int[1, 5000].Sample(users =>
        ActiveUsers.Quantile(users, 0, 0.999) == 0 && ActiveUsers.Quantile(users, 1, 0.999) == users);

    [Theory]
    [InlineData(1.0001)]
    [InlineData(-0.0001)]
    [InlineData(double.NaN)]
    public void A_probability_beyond_one_is_refused_by_name(double share) => Assert.Multiple(
        () => Assert.Contains("activeShare", Assert.Throws<ArgumentOutOfRangeException>(() => ActiveUsers.Quantile(5, share, 0.9)).Message, StringComparison.Ordinal),
        () => Assert.Contains("busyShare", Assert.Throws<ArgumentOutOfRangeException>(() => Trunks.CallCongestion(5, share, 2)).Message, StringComparison.Ordinal));

    [Fact]
    public void Days_are_the_same_in_tera_and_in_tebi_octets() => Gen.Select(Gen.Double[0.5, 100], Gen.Double[0.1, 500]).Sample((tebi, rate) =>
        Math.Abs(Recording.Days(tebi * Recording.Tebibyte, Recording.OctetsADay(rate * 1e6)) / Recording.Days(tebi * 1.099511627776 * Recording.Terabyte, Recording.OctetsADay(rate * 1e6)) - 1) < 1e-12);

    [Fact]
    public void Half_the_rate_keeps_twice_as_long() => Gen.Select(Gen.Int[1, 12], Gen.Double[0.1, 500]).Sample((disks, rate) =>
        Math.Abs(Recording.Days(Recording.UsableOctets(disks, 0, 4e12, 0.1), Recording.OctetsADay(rate * 5e5)) / Recording.Days(Recording.UsableOctets(disks, 0, 4e12, 0.1), Recording.OctetsADay(rate * 1e6)) - 2) < 1e-9);
}

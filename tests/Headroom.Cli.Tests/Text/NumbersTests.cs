using System.Globalization;

namespace Headroom.Cli.Tests.Text;

public sealed class NumbersTests
{
    [Theory]
    [InlineData("361.4 320.0 -41.4", 361.4, 320.0, -41.4)]
    [InlineData("226 320 94", 226.0, 320.0, 94.0)]
    [InlineData("18.0 20.5 2.5", 18.0, 20.5, 2.5)]
    [InlineData("0.175 0.600 0.425", 0.175, 0.6, 0.425)]
    [InlineData("12000 20000 8000", 12000.0, 20000.0, 8000.0)]
    [InlineData("0 5 5", 0.0, 5.0, 5.0)]
    [InlineData("0.1 320.0 319.9", 0.1, 320.0, 319.9)]
    public void Numbers_read_together_have_the_same_decimals(string shown, params double[] numbers) =>
        Assert.Equal(shown, string.Join(' ', Numbers.Together([.. numbers.Select(number => (double?)number)])));

    [Theory]
    [InlineData(0.1598, "V", "± 0.16 V")]
    [InlineData(3.1, "V", "± 3.1 V")]
    [InlineData(12.34, "W", "± 12 W")]
    [InlineData(345.6, "W", "± 346 W")]
    [InlineData(0.2, "", "± 0.2")]
    [InlineData(0, "W", "± 0 W")]
    public void An_interval_has_two_digits(double half, string unit, string shown) => Assert.Equal(shown, Numbers.Spread(half, unit));

    [Theory]
    [InlineData("1", "ports", "1 port")]
    [InlineData("-1", "ports", "-1 port")]
    [InlineData("2", "ports", "2 ports")]
    [InlineData("1", "frames/s", "1 frames/s")]
    [InlineData("1", "ms", "1 ms")]
    [InlineData("1", "", "1")]
    public void One_of_something_is_not_many(string number, string unit, string shown) => Assert.Equal(shown, Numbers.WithUnit(number, unit));

    [Fact]
    public void What_is_short_by_a_trifle_is_not_shown_as_nothing() =>
        Assert.Equal(["320.004", "320.000", "-0.004"], Numbers.Together([320.004, 320, -0.004]));

    [Fact]
    public void The_dust_of_a_sum_is_nothing_and_has_no_sign() =>
        Assert.Equal(["320", "320", "0"], Numbers.Together([320, 320, -5.7e-14]));

    [Fact]
    public void What_is_not_known_is_left_blank_and_what_has_no_end_is_said() =>
        Assert.Equal(["", "no limit", "5"], Numbers.Together([null, double.PositiveInfinity, 5]));

    [Fact]
    public void A_number_too_small_for_decimals_is_told_by_its_exponent() =>
        Assert.Equal("4e-10", Numbers.Together([0.01, 4e-10])[1]);

    [Fact]
    public void No_number_that_counts_is_shown_as_zero() => Gen.Select(Gen.Double[-1e5, 1e5], Gen.Double[-1, 1]).Sample((great, small) =>
    {
        foreach (var (text, number) in Numbers.Together([great, small]).Zip([great, small]))
        {
            var shown = double.Parse(text, CultureInfo.InvariantCulture);
            Assert.True(Math.Abs(number) <= 1e-8 * Math.Max(Math.Abs(great), Math.Abs(small)) || shown != 0, $"{number} is shown as {text}");
        }
    });
}

using Headroom.Engineering.Sums;

namespace Headroom.Engineering.Tests.Sums;

public sealed class SumReaderTests
{
    private const string Sound = "far-end-volts volts 54 V length 82 m cable 23 AWG draw 13 W";

    [Theory]
    [InlineData("far-end-volts volts 54V length 82m cable 23AWG draw 13W")]
    [InlineData("far-end-volts draw 13 W cable 23 AWG length 82 m volts 54 V")]
    [InlineData("far-end-volts volts=54V length=82 m cable=23 AWG draw=13 W")]
    [InlineData("far-end-volts volts 54 V measured length 82 m cable 23 AWG draw 13 W declared")]
    [InlineData("far-end-volts volts 54 V DC length 8200 cm cable 23 gauge draw 0.013 kW")]
    public void What_is_meant_can_be_typed_in_many_ways(string typed) =>
        Assert.Equal(Reckoned.Of(Sound).Figures[0].Value!.Value, Reckoned.Of(typed).Figures[0].Value!.Value, 1e-9);

    [Fact]
    public void A_temperature_below_zero_needs_no_quotation_marks() =>
        Assert.True(Reckoned.Of(Sound + " temperature -20 C").Figures[0].Value > Reckoned.Of(Sound + " temperature 20 C").Figures[0].Value);

    [Theory]
    [InlineData("sum-of-sources levels 45 dB, 45 dB, 45 dB", "sum-of-sources levels 3 x 45 dB")]
    [InlineData("sum-of-sources levels 45, 45, 30 dB", "sum-of-sources levels 2 x 45, 30 dB")]
    [InlineData("sum-of-sources levels 45,30 dB", "sum-of-sources levels 45 dB,30 dB")]
    [InlineData("conduit-fill inside 26.6 mm cables 7 × 6.1 mm", "conduit-fill inside 26.6 mm cables 7x6.1mm")]
    public void Lists_are_written_as_people_write_them(string one, string other) =>
        Assert.Equal(Reckoned.Of(one).Figures[0].Value!.Value, Reckoned.Of(other).Figures[0].Value!.Value, 1e-9);

    public static TheoryData<string, string> Slips => new()
    {
        { Sound.Replace("82 m", "82 V", StringComparison.Ordinal), "length is '82 V'; a length in m, mm, cm, km, ft or in; did you mean 'm'?" },
        { Sound.Replace("82 m", "82 mtr", StringComparison.Ordinal), "length is '82 mtr'; a length in m, mm, cm, km, ft or in; write it like '12.5 m'" },
        { Sound.Replace("82 m", "82", StringComparison.Ordinal), "length is '82'; a length in m, mm, cm, km, ft or in; write the unit behind it, like '82 m'" },
        { Sound.Replace("82 m", "8200 m", StringComparison.Ordinal), "length is '8200 m'; a length between 0.1 and 2000 m; correct it; a sum is worth nothing outside the range it was made for" },
        { Sound.Replace("82 m", "82 ± 2 m", StringComparison.Ordinal), "length is '82 ± 2 m'; a length between 0.1 and 2000 m; give one value; to see what an interval does, work it out twice" },
        { Sound.Replace("82 m", "1,5 m", StringComparison.Ordinal), "length is '1,5 m'; a length with a point for decimals and no mark between thousands; write 12.5 for twelve and a half, and 1500 for fifteen hundred" },
        { Sound.Replace("length 82 m", "lenght 82 m", StringComparison.Ordinal), "far-end-volts has no input 'lenght'; it takes volts, length, cable, draw, temperature, pairs, conductivity and least-volts; did you mean length?" },
        { Sound.Replace(" 82 m", "", StringComparison.Ordinal), "length has no value behind it; a length between 0.1 and 2000 m" },
        { Sound + " draw 15 W", "draw is given twice, '13 W' and '15 W'; a power between 0.01 and 200 W; give it once" },
        { Sound.Replace(" draw 13 W", "", StringComparison.Ordinal), "draw is missing: what the device draws at its connector; a power between 0.01 and 200 W" },
        { Sound + " pairs 3", "pairs is '3'; 2 or 4; correct it" },
        { Sound + " pairs both", "pairs is 'both'; 2 or 4; write the number and nothing else" },
        { "power-budget budget 130 W devices 7 x 6.4 W by clas", "by is 'clas'; class, port-limit, negotiated, measured or autoclass; did you mean class?" },
        { "power-budget budget 130 W devices 7 x V", "devices is '7 x V'; a power: a number and W, mW or kW; write it like '12.5 W', or leave it out when it is not known" },
        { "power-budget budget 130 W devices 0 x 6.4 W", "devices is '0 x 6.4 W'; a power between 0.01 and 71.3 W, or several with commas: 7 x 5 W, 10 W; write '0 x 6.4 W' as a number of them, x, and the value: 7 x 5 W, 10 W" },
        { "power-budget budget 130 W devices 99999999999 x 6.4 W", "devices is '99999999999 x 6.4 W'; a power between 0.01 and 71.3 W, or several with commas: 7 x 5 W, 10 W; write '99999999999 x 6.4 W' as a number of them, x, and the value: 7 x 5 W, 10 W" },
        { "noise-rating bands 38, 40, 43 dB", "bands is '38, 40, 43 dB'; a level of an octave band between -20 and 140 dB, or several with commas, 8 of them: 36, 39, 42, 44, 45, 43, 40, 34 dB; 3 were given" },
    };

    [Theory, MemberData(nameof(Slips))]
    public void A_slip_says_what_was_given_what_is_allowed_and_what_to_do(string typed, string complaint) =>
        Assert.Equal([complaint], Reckoned.Complaints(typed));

    [Fact]
    public void All_that_is_missing_or_wrong_is_said_in_one_go() =>
        Assert.Equal(["volts", "length", "cable", "draw", "pairs"], Reckoned.Complaints("far-end-volts length 82 V cable 23 mm pairs 3").Select(line => line.Split(' ')[0]));

    [Fact]
    public void A_word_that_is_a_unit_is_no_misspelt_name() =>
        Assert.Equal(["area"], Reckoned.Complaints("next-room level 57 dB wall 38 dB wall-area 8 sq ft absorption 16 m2 area 3 m2").Select(line => line.Split('\'')[1]));

    [Fact]
    public void A_figure_in_a_sentence_is_shown_in_the_unit_that_is_asked_for() =>
        Assert.Equal("It is 3 of {a}.", Told.In($"It is {new Told(3, "m")} of {{a}}.", told => $"{told.Value}"));
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Acoustics;

/// <summary>Which fan level counts; all figures are invented.</summary>
public sealed class FanLevelTests
{
    private static SoundSite Stepped(string air, string more = "") => SoundSite.Yard with
    {
        Spaces = $"yard: {{kind: outdoors, background: 20 dB(A){air}}}",
        Switches = $"sw-1: {{model: stepped, in: ROOM, at: 1.5 x 1.5 x 1.2 m{more}}}",
    };

    [Theory]
    [InlineData(", temperature: 29 °C", "", 38)]
    [InlineData(", temperature: 30 °C", "", 48)]
    [InlineData(", temperature: 41 °C", "", 58)]
    [InlineData(", temperature: 41 °C", ", level: 1", 38)]
    [InlineData("", ", level: 2", 48)]
    public void The_level_stated_governs_else_the_air_at_the_inlet(string air, string level, double power) =>
        Assert.Equal(power - 7.98, Stepped(air, level).Equipment, 0.005);

    [Fact]
    public void The_load_drives_the_level_as_well_as_the_air()
    {
        var site = Stepped(", temperature: 20 °C") with
        {
            More = "  endpoints: {cam-1..cam-5: {model: sanderling, near: yard}}\n  drops: {D-1..D-5: {from: yard, length: 20 m, cable: cat6-23}}",
        };
        site = site with { More = site.More.Replace("model: sanderling, near: yard", "model: sanderling, drop: D-1..D-5", StringComparison.Ordinal) };
        // Five cameras take some 20 W on an ordinary day and more than 40 with their lamps on: level 1, and level 2 at their most.
        var entry = site.Entry;
        Assert.Equal(38 - 7.98, site.Equipment, 0.01);
        Assert.True(entry.Peak > entry.Demand + 5);
        Assert.Contains(entry.Beside, row => row.Name == "at its most" && row.Note == "sw-1 at level 2");
    }

    [Fact]
    public void The_warmest_case_in_which_somebody_is_there_carries_the_verdict()
    {
        const string air = ", temperature: {weekday: 22 °C, summer: 31 °C, weekend: 44 °C}";
        var all = Stepped(air);
        Assert.Equal(58 - 7.98, all.Equipment, 0.005);
        Assert.Contains("weekend", all.Entry.What, StringComparison.Ordinal);
        var some = all with { Listener = "at: 2.5 x 1.5 x 1.2 m, limit: 45 dB(A), when: [weekday, summer]" };
        Assert.Equal(48 - 7.98, some.Equipment, 0.005);
        Assert.Contains(some.Entry.Beside, row => row.Name == "weekday");
        Assert.DoesNotContain(some.Entry.Beside, row => row.Name == "weekend");
    }

    [Theory]
    [InlineData(29, Verdict.Short)]
    [InlineData(40, Verdict.Unknown)]
    [InlineData(55, Verdict.Clear)]
    public void Where_nothing_tells_the_level_only_what_holds_for_all_of_them_is_a_verdict(int limit, Verdict verdict)
    {
        var entry = (Stepped("") with { Listener = $"at: 2.5 x 1.5 x 1.2 m, limit: {limit} dB(A)" }).Entry;
        Assert.Equal(verdict, entry.Studied);
        if (verdict == Verdict.Unknown)
            Assert.Contains("how warm is it in yard", entry.Question, StringComparison.Ordinal);
        Assert.Contains(entry.Beside, row => row.Name.EndsWith("lowest levels possible", StringComparison.Ordinal));
    }
}

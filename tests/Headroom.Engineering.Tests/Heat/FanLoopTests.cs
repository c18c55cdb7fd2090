using Headroom.Engineering.Heat;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>The loop of inlet, fan level and flow; all figures are invented.</summary>
public sealed class FanLoopTests
{
    private static HeatSite Room(string air, string more = "") => new()
    {
        Spaces = $"room: {{size: 4 x 3 x 2.5 m, kind: open office, surfaces: average, background: 30 dB(A), temperature: {air}}}",
        Racks = "A: {in: room, height: 6 U, at: 1 x 1 x 1 m}",
        Survey = "listeners: {ear: {in: room, at: 2 x 1 x 1 m, limit: 60 dB(A)}}",
        Switches = $"sw-1: {{model: stepped, in: A, unit: 1{more}}}",
    };

    // 40 W in 10 m3/h is some 12 K: 3 K come back at level 1, 0.75 K at level 2, which begins at 30 °C.
    [Theory]
    [InlineData("25 °C", 28.0, false)]
    [InlineData("28 °C", 31.05, true)]
    [InlineData("32 °C", 32.78, false)]
    public void It_ends_where_a_level_drives_itself_and_says_where_it_does_not(string air, double inlet, bool unsettled)
    {
        var entry = Room(air).Entry();
        Assert.Equal(inlet, entry.Demand!.Value, 0.1);
        Assert.Equal(unsettled, entry.Story.Say(entry).Contains("do not settle", StringComparison.Ordinal));
        Assert.Equal(unsettled, entry.Assumed.Any(text => text.Contains("go up and down", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("25 °C", 1)]
    [InlineData("28 °C", 2)]
    [InlineData("32 °C", 2)]
    public void Sound_takes_the_level_that_heat_came_to(string air, int level)
    {
        var entry = Room(air).Entry("sound/ear/level");
        Assert.Contains(entry.Story.Work(entry).Inputs.Select(i => $"{i.Name} {i.Origin}").Concat(entry.Story.Work(entry).Steps.Select(s => $"{s.Name} {s.Sum}")).Append(entry.Story.Say(entry)),
            text => text.Contains($"level {level}", StringComparison.Ordinal));
        Assert.DoesNotContain(entry.Assumed, text => text.Contains("air of the space taken", StringComparison.Ordinal));
    }

    [Fact]
    public void A_level_that_is_stated_governs() => Assert.Equal(28 + 0.25 * 40 * 3600 / (Air.Density(28) * 1006 * 10), Room("28 °C", ", level: 1").Inlet, 0.01);
}

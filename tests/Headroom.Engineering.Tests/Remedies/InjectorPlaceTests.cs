namespace Headroom.Engineering.Tests.Remedies;

/// <summary>An injector in the closet feeds a device over the whole run; one in its room over the cord there alone.</summary>
public sealed class InjectorPlaceTests
{
    private static Domain.Ledgers.LedgerEntry Volts(string space, string cord = "") => Entry(space, cord, "power/radio-1/volts");

    private static Domain.Ledgers.LedgerEntry Entry(string space, string cord, string id) => Study.Run(RemedySite.Job($$$"""
        survey:
          spaces: {closet: {kind: cupboard}, hall: {kind: open office}}
          drops: {K-1: {from: closet, to: hall, length: 90 m, cable: cat5e-24, ambient: 25 °C{{{cord}}} } }
          endpoints: {radio-1: {model: far-radio, drop: K-1}}
        designs: {d: {injectors: {feed: {model: v24, in: {{{space}}} } }, patch: {K-1: feed} } }
        """), RemedySite.Catalogue, RemedySite.Request).Entries.Single(entry => entry.Id == id);

    // 26 AWG has 133.9 Ω/km at 20 °C (ASTM B258 for annealed copper), 3.93 % more at 30 °C; 10 W at 24 V over 2.5 m of it, two
    // conductors side by side each way: R = 0.348 Ω, V = (24 + √(24² − 4 · 0.348 · 10)) / 2 = 23.854 V.
    [Fact]
    public void In_the_room_of_the_device_only_half_of_the_cords_nobody_wrote_lies_between_them()
    {
        var entry = Volts("hall");
        Assert.Equal(23.854, entry.Limit!.Value, 0.002);
        Assert.Contains("over the cord from feed, which stands beside it", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Contains(entry.Story.Work(entry).Inputs, input => input is { Name: "length of device cord of K-1", Value: 2.5 });
    }

    [Fact]
    public void In_the_closet_it_is_the_whole_run() => Assert.True(Volts("closet").Limit < 20);

    // 24 AWG: 84.2 Ω/km at 20 °C, 3.93 % more at the 30 °C taken for a cord: 10 m are 0.875 Ω; V = 23.630 V.
    [Fact]
    public void The_cord_that_was_written_counts()
    {
        var entry = Volts("hall", ", device cord: 10 m of cat6-24");
        Assert.Equal(23.630, entry.Limit!.Value, 0.003);
    }

    [Fact]
    public void The_cable_of_the_building_carries_no_current_then()
    {
        Assert.Equal(90, Entry("hall", "", "cabling/K-1/length").Demand);
        Assert.DoesNotContain(Volts("hall").Cautions, caution => caution.Code == "MIXED-PANEL");
    }
}

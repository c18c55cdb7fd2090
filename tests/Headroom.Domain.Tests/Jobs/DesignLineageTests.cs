using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Domain.Tests.Rules;

namespace Headroom.Domain.Tests.Jobs;

public class DesignLineageTests
{
    [Fact]
    public void A_design_that_stands_alone_is_whole_as_written()
    {
        var site = Site.Sound();
        Assert.Same(site.Designs[0], DesignLineage.Whole(site.Job, "first"));
    }

    [Fact]
    public void A_design_like_another_takes_over_what_it_does_not_say()
    {
        var whole = Second(d => d with { Switches = [] });
        Assert.Equal(["sw-1", "sw-2"], whole.Switches.Select(s => s.Id));
        Assert.Equal(2, whole.Uplinks!.Count);
        Assert.Equal(4, whole.Patch.Count);
        Assert.Null(whole.Like);
    }

    [Fact]
    public void None_takes_away()
    {
        var whole = Second(d => d with { Switches = [], Removed = ["sw-2", "ups-1", "inj-1", "K-01", "uplinks"] });
        Assert.Equal(["sw-1"], whole.Switches.Select(s => s.Id));
        Assert.Empty(whole.Standby);
        Assert.Empty(whole.Injectors);
        Assert.Empty(whole.Uplinks!);
        Assert.Equal(["K-02", "K-03", "radio-1"], whole.Patch.Select(p => p.What));
    }

    [Fact]
    public void Links_written_anew_replace_all_inherited_ones()
    {
        var whole = Second(d => d with { Uplinks = [new(new("sw-2", 9), new("line", null), null, null, null, Findings.Place.None)] });
        Assert.Equal("sw-2/9", Assert.Single(whole.Uplinks!).From.ToString());
    }

    [Fact]
    public void A_drop_patched_anew_keeps_its_place_in_the_list()
    {
        var whole = Second(d => d with { Patch = [new("K-02", new("sw-2", 5), Findings.Place.None), new("new", new("sw-2", 6), Findings.Place.None)] });
        Assert.Equal(["K-01", "K-02", "K-03", "radio-1", "new"], whole.Patch.Select(p => p.What));
        Assert.Equal("sw-2/5", whole.Patch[1].To.ToString());
    }

    [Fact]
    public void Settings_are_taken_over_port_by_port()
    {
        var under = PowerSetting.Silent with { AtRefusal = AtRefusal.Stop, PortLimits = Limits((1, 15), (2, 15)) };
        var over = PowerSetting.Silent with { PortLimits = Limits((2, 30), (3, 30)) };
        var both = over.Over(under);
        Assert.Equal([(1, 15.0), (2, 30.0), (3, 30.0)], both.PortLimits.OrderBy(l => l.Key).Select(l => (l.Key, l.Value.Value.Value)));
        Assert.Equal(AtRefusal.Stop, both.AtRefusal);
    }

    [Fact]
    public void Moving_to_another_space_drops_spot_and_rack_unit()
    {
        var moved = new Standing("store", null, null).Over(new("A", null, 3));
        Assert.Equal(new("store", null, null), moved);
    }

    [Fact]
    public void Staying_where_it_is_keeps_them() =>
        Assert.Equal(new Standing("A", null, 3), new Standing("A", null, null).Over(new("A", null, 3)));

    [Fact]
    public void Another_model_does_not_keep_the_supply_of_the_first()
    {
        var site = Site.Sound();
        var whole = Second(d => d with { Switches = [site.Switch("sw-1", "finch")] });
        Assert.Equal(("finch", null), (whole.Switches[0].Model, whole.Switches[0].Supply));
        Assert.Equal("usual", Second(d => d).Switches[0].Supply);
    }

    [Fact]
    public void A_line_of_three_is_followed_to_its_end()
    {
        var site = Site.Sound();
        site.Designs.Add(site.Empty("third") with { Like = "second" });
        Assert.Equal("office", DesignLineage.Whole(site.Job, "third")!.Switches[0].Standing.In);
    }

    [Theory]
    [InlineData("nobody")]
    [InlineData("ring")]
    [InlineData("orphan")]
    public void A_broken_line_has_no_whole(string id)
    {
        var site = Site.Sound();
        site.Designs.Add(site.Empty("ring") with { Like = "ring" });
        site.Designs.Add(site.Empty("orphan") with { Like = "nobody" });
        Assert.Null(DesignLineage.Whole(site.Job, id));
    }

    [Fact]
    public void Two_things_of_one_id_do_not_break_it()
    {
        var site = Site.Sound();
        var whole = Second(d => d with { Switches = [site.Switch("sw-9", "wren"), site.Switch("sw-9", "finch")] });
        Assert.Equal(["sw-1", "sw-2", "sw-9", "sw-9"], whole.Switches.Select(s => s.Id));
    }

    private static Design Second(Func<Design, Design> change)
    {
        var site = Site.Sound();
        site.Designs.Change(1, change);
        return DesignLineage.Whole(site.Job, "second")!;
    }

    private static Dictionary<int, Given<Watts>> Limits(params (int Port, double Watts)[] limits) =>
        limits.ToDictionary(l => l.Port, l => Made.Of(new Watts(l.Watts)));
}

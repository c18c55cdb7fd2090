using Headroom.Domain.Ledgers;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Tests.Acoustics;

/// <summary>Ways of sound other than the straight one; all figures are invented.</summary>
public sealed class SoundWayTests
{
    private const string Rooms = "store: {size: 2 x 2 x 2.5 m, reverberation: 0.5 s}, office: {size: 4 x 3 x 2.5 m, kind: private office, reverberation: 0.5 s, background: 20 dB(A)}";

    private static SoundSite NextDoor(string wall) => new()
    {
        Spaces = Rooms, Room = "office", Switches = "sw-1: {model: hum, in: store, at: 1 x 1 x 1 m}",
        More = wall.Length == 0 ? "" : $"  partitions: {{wall: {{between: [store, office], {wall}}}}}",
    };

    [Fact]
    public void Through_a_wall_with_door_and_gap_comes_what_the_sum_of_its_parts_lets_through()
    {
        // By hand: A1 = 0.161·10/0.5 = 3.22, S1 = 28, R1 = 3.638; A2 = 9.66. L1 = 44 + 10 lg(4/3.638) = 44.41.
        // R' = −10 lg((5·10^−3.8 + 1.79·10^−2.7 + 0.01) / 6.8) = 26.75; L2 = 44.41 − 26.75 + 10 lg(6.8/9.66) = 16.13.
        var site = NextDoor("area: 6.8 m2, reduction: 38 dB, door: 1.79 m2, door reduction: 27 dB, gap: 100 cm2");
        Assert.Equal(16.13, site.Equipment, 0.02);
        Assert.Contains(site.Study().Answers, answer => answer.Text.StartsWith("Heard by one who listens", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "what is between store and office")]
    [InlineData("area: 6 m2", "made of")]
    [InlineData("reduction: 40 dB", "how large is the wall")]
    [InlineData("area: 6 m2, reduction: 40 dB, door: 2 m2", "what door is in wall")]
    public void What_nobody_wrote_of_a_wall_is_asked_and_not_taken_for_silence(string wall, string question)
    {
        var entry = NextDoor(wall).Entry;
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Contains(question, entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_on_another_floor_is_left_out_and_said()
    {
        var site = NextDoor("") with { Spaces = Rooms.Replace("2.5 m, rev", "2.5 m, floor: cellar, rev", StringComparison.Ordinal).Replace("office, rev", "office, floor: ground, rev", StringComparison.Ordinal) };
        Assert.Equal(Verdict.Clear, site.Entry.Studied);
        Assert.Contains(site.Entry.Assumed, assumed => assumed.Contains("another floor", StringComparison.Ordinal));
    }

    private static SoundSite Rack(string cabinet) => SoundSite.Yard with
    {
        More = $"  racks: {{A: {{in: ROOM, at: 1.5 x 1.5 x 1.2 m{cabinet}}}}}", Switches = "sw-1: {model: hum, in: A, unit: 1}",
    };

    [Fact]
    public void A_cabinet_keeps_its_insertion_loss_and_one_without_a_figure_keeps_none()
    {
        Assert.Equal(36.02, Rack("").Equipment, 0.005);
        Assert.Equal(30.02, Rack(", cabinet: box").Equipment, 0.005);
        Assert.Equal(36.02, Rack(", cabinet: bare").Equipment, 0.005);
        Assert.Contains(Rack(", cabinet: bare").Entry.Assumed, assumed => assumed.Contains("insertion loss of cabinet bare not known", StringComparison.Ordinal));
    }

    private static SoundSite Cupboard(string vents, string corner = ", corner: 4 x 1 m") => new()
    {
        Spaces = $"cupboard: {{size: 0.6 x 0.6 x 2 m, kind: cupboard, exposed: [front], beside: office{vents}{corner}}}, "
            + "office: {size: 4 x 3 x 2.5 m, kind: private office, surfaces: soft, background: 20 dB(A), corner: 0 x 0 m}",
        Room = "office", Switches = "sw-1: {model: hum, in: cupboard}",
    };

    [Fact]
    public void Out_of_a_cupboard_comes_what_its_walls_and_openings_leave()
    {
        // By hand: front 1.2 m², 0.06 open: p = 0.05, so −10 lg(0.95·10^−2.5 + 0.05) + 10 lg(0.05 + 0.05) = 2.76 (EN-2).
        var open = Cupboard(", vents: 600 cm2");
        Assert.Equal(2.8, open.Result.Listeners[0].Paths[0].Loss, 0.05);
        Assert.Equal(0, Cupboard("").Result.Listeners[0].Paths[0].Loss);
        Assert.Contains(Cupboard("").Entry.Assumed, assumed => assumed.Contains("vents of cupboard not surveyed", StringComparison.Ordinal));
        Assert.True(Cupboard(", vents: none").Equipment < open.Equipment);
        Assert.True(Cupboard(", vents: none, reduction: 5 dB").Equipment > Cupboard(", vents: none").Equipment);
    }

    [Fact]
    public void Where_a_cupboard_is_in_its_room_must_be_known() =>
        Assert.Contains("write the corner of both", Cupboard(", vents: none", "").Entry.Question, StringComparison.Ordinal);

    private static SoundSite Desk(string kind, string ear, string source = "2 x 1.2 x 0.44 m", string room = "") => SoundSite.Yard with
    {
        Spaces = room.Length > 0 ? room : SoundSite.Yard.Spaces, Room = room.Length > 0 ? "office" : "yard",
        Listener = $"at: {ear}, limit: 40 dB(A)", Switches = $"sw-1: {{model: hum, in: ROOM, at: {source}}}",
        More = $"  screens: {{edge: {{in: ROOM, kind: {kind}, from: 1 x 0.7 x 0.74 m, to: 3 x 0.7 x 0.74 m}}}}",
    };

    [Fact]
    public void Under_a_desk_a_switch_is_quieter_by_the_loss_at_the_edge()
    {
        // The case BD-1: source 0.5 m behind and 0.3 m below the edge, ear 0.3 m before and 0.5 m above it: 0.03482 m longer.
        var site = Desk("desk", "2 x 0.4 x 1.24 m");
        var path = site.Result.Listeners[0].Paths[0];
        Assert.Equal(0.03482, path.PathDifference!.Value, 0.00001);
        var open = site with { More = "" };
        Assert.Equal(7.8, open.Equipment - site.Equipment, 0.1);
    }

    [Theory]
    [InlineData("desk", "2 x 1.4 x 1.24 m", "2 x 1.2 x 0.44 m")]
    [InlineData("desk", "2 x 0.4 x 1.24 m", "2 x 1.2 x 0.9 m")]
    [InlineData("desk", "2 x 0.4 x 1.24 m", "5 x 1.2 x 0.44 m")]
    [InlineData("desk", "2 x 0.4 x 0.8 m", "2 x 4 x 0.7 m")]
    public void An_edge_that_is_not_between_takes_nothing(string kind, string ear, string source) =>
        Assert.Null(Desk(kind, ear, source).Result.Listeners[0].Paths[0].PathDifference);

    [Fact]
    public void A_screen_stands_in_the_way_of_what_passes_below_its_edge_and_hardly_of_what_passes_above()
    {
        var below = Desk("screen", "2 x 0.4 x 0.5 m", "2 x 1.2 x 0.5 m").Result.Listeners[0].Paths[0].PathDifference!.Value;
        var above = Desk("screen", "2 x 0.4 x 1.4 m", "2 x 1.2 x 1.0 m").Result.Listeners[0].Paths[0].PathDifference!.Value;
        Assert.True(below > 0 && above < 0);
        Assert.Equal(0, EdgeDiffraction.Standard(EdgeDiffraction.Fresnel(above, 1000)), 1e-9);
    }

    [Fact]
    public void In_a_room_an_edge_leaves_what_the_walls_give_back()
    {
        const string room = "office: {size: 4 x 3 x 2.5 m, kind: private office, surfaces: hard, background: 20 dB(A)}";
        var desk = Desk("desk", "2 x 0.4 x 1.24 m", room: room);
        var gain = (desk with { More = "" }).Equipment - desk.Equipment;
        Assert.InRange(gain, 0.1, 4);
    }

    [Theory]
    [InlineData("limit: 40 dB(A)", "sw-1: {model: hum, in: ROOM, at: 1 x 1 x 1 m}", "the spot of the ear")]
    [InlineData("at: 2 x 2 x 1.2 m", "sw-1: {model: hum, in: ROOM}", "where in office does sw-1 stand")]
    [InlineData("at: 2 x 2 x 1.2 m", "sw-1: {model: hum}", "where does sw-1 stand")]
    public void A_place_that_nobody_wrote_is_asked_for(string listener, string unit, string question) => Assert.Contains(
        question, (SoundSite.Office with { Listener = listener, Switches = unit }).Entry.Question, StringComparison.Ordinal);
}

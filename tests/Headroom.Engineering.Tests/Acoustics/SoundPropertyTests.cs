using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Tests.Acoustics;

/// <summary>What holds of every sound.</summary>
public sealed class SoundPropertyTests
{
    private static readonly Gen<(double X, double Y, double Z)> Spots = Gen.Select(Gen.Double[0.4, 3.6], Gen.Double[0.4, 2.6], Gen.Double[0.4, 2.1]);

    private static readonly Gen<double[]> Several = Gen.Double[-20, 90].Array[1, 8];

    private static string Text(double value) => value.ToString("F9", CultureInfo.InvariantCulture);

    private static SoundSite At((double X, double Y, double Z) source, (double X, double Y, double Z) ear, double power, double limit = 45) => SoundSite.Office with
    {
        Listener = $"at: {Text(ear.X)} x {Text(ear.Y)} x {Text(ear.Z)} m, limit: {Text(limit)} dB(A)", Switches = "",
        More = $"  noises: {{copier: {{in: ROOM, at: {Text(source.X)} x {Text(source.Y)} x {Text(source.Z)} m, power: {Text(power)} dB(A)}}}}",
    };

    [Fact]
    public void The_sum_of_levels_is_at_least_the_loudest_and_at_most_that_and_ten_times_the_log_of_their_number() => Several.Sample(
        levels =>
        {
            var sum = Levels.Together(levels)!.Value;
            Assert.InRange(sum, levels.Max() - 1e-9, levels.Max() + 10 * Math.Log10(levels.Length) + 1e-9);
            Assert.Equal(Levels.Energy(sum), levels.Sum(Levels.Energy), Levels.Energy(sum) * 1e-9);
        },
        iter: Long.Samples(2000));

    [Fact]
    public void What_is_put_into_a_background_comes_out_of_it_again() => Gen.Select(Gen.Double[20, 60], Gen.Double[3.001, 14.9]).Sample(
        (background, over) =>
        {
            var (alone, branch) = BackgroundCorrection.SourceAlone(background + over, background);
            Assert.Equal(BackgroundBranch.Corrected, branch);
            Assert.Equal(background + over, Levels.Together(alone!.Value, background)!.Value, 1e-9);
        },
        iter: Long.Samples(2000));

    [Fact]
    public void In_a_room_that_gives_nothing_back_there_is_the_free_field() => Gen.Select(Gen.Double[0.2, 20], Gen.Double[1, 8]).Sample(
        (metres, q) =>
        {
            Assert.Equal(PointSource.LevelLessPower(q, metres), RoomAcoustics.LevelLessPower(q, metres, double.PositiveInfinity), 1e-12);
            Assert.Equal(PointSource.LevelLessPower(q, metres), RoomAcoustics.LevelLessPower(q, metres, 1e12), 1e-6);
            Assert.True(RoomAcoustics.LevelLessPower(q, metres, 50) < RoomAcoustics.LevelLessPower(q, metres, 10));
        },
        iter: Long.Samples(2000));

    [Fact]
    public void At_the_critical_distance_straight_and_returned_sound_are_alike() => Gen.Select(Gen.Double[1, 8], Gen.Double[1, 300]).Sample(
        (q, constant) => Assert.Equal(
            PointSource.LevelLessPower(q, RoomAcoustics.CriticalMetres(q, constant)), RoomAcoustics.ReverberantLessPower(constant), 1e-9),
        iter: Long.Samples(2000));

    [Fact]
    public void All_edge_formulas_rise_with_the_way_round_and_the_standard_one_is_the_least() => Gen.Double[0, 50].Sample(
        n =>
        {
            Assert.True(EdgeDiffraction.Standard(n) <= Math.Min(EdgeDiffraction.KurzeAnderson(n), EdgeDiffraction.Maekawa(n)) + 1e-9);
            Assert.True(EdgeDiffraction.Standard(n) <= EdgeDiffraction.Standard(n + 0.1) && EdgeDiffraction.Standard(n) <= EdgeDiffraction.MostLoss + 1e-9);
            Assert.True(EdgeDiffraction.KurzeAnderson(n) < EdgeDiffraction.KurzeAnderson(n + 0.1));
        },
        iter: Long.Samples(2000));

    [Fact]
    public void A_wall_of_parts_lies_between_its_best_and_its_worst_part() => Gen.Select(Gen.Double[1, 20], Gen.Double[20, 60], Gen.Double[0.1, 3], Gen.Double[10, 40]).Sample(
        (wall, reduction, door, doorReduction) =>
        {
            var all = Enclosures.Composite(new WallPart(wall, reduction), new WallPart(door, doorReduction));
            Assert.InRange(all, Math.Min(reduction, doorReduction) - 1e-9, Math.Max(reduction, doorReduction) + 1e-9);
            Assert.Equal(Enclosures.WithOpenings(reduction, door / (wall + door)), Enclosures.Composite(new WallPart(wall, reduction), new WallPart(door, 0)), 1e-9);
        },
        iter: Long.Samples(2000));

    [Fact]
    public void Two_figures_weighed_lie_between_both_and_are_better_known_than_either() => Gen.Select(Gen.Double[20, 60], Gen.Double[0.3, 6], Gen.Double[20, 60], Gen.Double[0.3, 6]).Sample(
        (a, ua, b, ub) =>
        {
            var both = Precision.Combine(new(a, ua), new(b, ub));
            Assert.InRange(both.Value, Math.Min(a, b) - 1e-9, Math.Max(a, b) + 1e-9);
            Assert.True(both.Uncertainty < Math.Min(ua, ub));
        },
        iter: Long.Samples(2000));

    [Fact]
    public void More_sound_power_is_heard_as_so_much_more() => Gen.Select(Spots, Spots, Gen.Double[20, 60]).Sample(
        (source, ear, power) => Assert.Equal(At(source, ear, power).Equipment + 3, At(source, ear, power + 3).Equipment, 1e-6),
        iter: Long.Samples(200));

    [Fact]
    public void Farther_away_it_is_never_louder() => Gen.Select(Gen.Double[0.4, 3.2], Gen.Double[0.1, 0.4]).Sample(
        (x, step) => Assert.True(At((0.5, 1.5, 1), (x, 1.5, 1.2), 45).Equipment >= At((0.5, 1.5, 1), (x + step, 1.5, 1.2), 45).Equipment - 1e-9
            || x < 0.5),
        iter: Long.Samples(200));

    [Fact]
    public void Up_to_where_it_holds_nothing_is_left_of_the_limit() => Gen.Select(Spots, Spots, Gen.Double[35, 55]).Sample(
        (source, ear, power) =>
        {
            var entry = At(source, ear, power).Entry;
            var row = entry.Story.Holds(entry).Single(holds => holds.Input == "sound power of copier");
            Assert.Equal(0, At(source, ear, row.AtLimit!.Value).Entry.Left!.Value, 1e-5);
            Assert.Equal(Verdict.Short, At(source, ear, row.AtLimit.Value + 0.01).Entry.Studied);
            var loss = entry.Story.Holds(entry).Single(holds => holds.Unit == "dB");
            Assert.Equal(Math.Max(0, power - row.AtLimit.Value), loss.AtLimit!.Value, 1e-6);
        },
        iter: Long.Samples(100));

    [Fact]
    public void The_mesh_of_a_room_has_at_each_point_what_an_ear_there_hears() => Gen.Select(Spots, Gen.Int[0, 7], Gen.Int[0, 5]).Sample(
        (source, column, row) =>
        {
            var grid = SoundGrids.Of(At(source, (2, 1.5, 1.2), 44).Result, "office", (8, 6), 1.2)!;
            var spot = grid.SpotAt(column, row);
            Assert.Equal(At(source, (spot.X, spot.Y, spot.Z), 44).Entry.Demand!.Value, grid.At(column, row), 1e-6);
        },
        iter: Long.Samples(100));

    [Fact]
    public void A_mesh_past_an_edge_agrees_with_the_ear_too()
    {
        var site = SoundSite.Office with
        {
            More = "  screens: {edge: {in: ROOM, kind: screen, from: 2 x 0 x 1.6 m, to: 2 x 3 x 1.6 m}}", Listener = "at: 3.25 x 1.25 x 1.2 m, limit: 40 dB(A)",
        };
        var grid = SoundGrids.Of(site.Result, "office", (8, 6), 1.2)!;
        Assert.Equal(site.Entry.Demand!.Value, grid.At(6, 2), 1e-5);
        Assert.Equal(new Spot(3.25, 1.25, 1.2), grid.SpotAt(6, 2));
        Assert.Null(SoundGrids.Of(site.Result, "attic", (8, 6), 1.2));
    }

    [Fact]
    public void Feet_and_metres_give_the_same_verdicts()
    {
        var metres = SoundSite.Office with { Spaces = SoundSite.Office.Spaces.Replace("4 x 3 x 2.5 m", "3.6576 x 3.048 x 2.4384 m", StringComparison.Ordinal), Listener = "at: 2.4384 x 1.524 x 1.2192 m, limit: 38 dB(A)", Switches = "sw-1: {model: hum, in: ROOM, at: 1.2192 x 1.524 x 0.9144 m}" };
        var feet = SoundSite.Office with { Spaces = SoundSite.Office.Spaces.Replace("4 x 3 x 2.5 m", "12 x 10 x 8 ft", StringComparison.Ordinal).Replace("20 °C", "68 F", StringComparison.Ordinal), Listener = "at: 8 x 5 x 4 ft, limit: 38 dB(A)", Switches = "sw-1: {model: hum, in: ROOM, at: 4 x 5 x 3 ft}" };
        Assert.Equal(metres.Entry.Studied, feet.Entry.Studied);
        Assert.Equal(metres.Entry.Left!.Value, feet.Entry.Left!.Value, 1e-6);
    }
}

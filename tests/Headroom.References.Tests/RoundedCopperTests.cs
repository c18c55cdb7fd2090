using Headroom.Engineering.Cabling;
using Headroom.Engineering.Power;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests;

/// <summary>
/// The finding on the wire and load tables: they were printed from 1.7241e-8 Ω·m, the program reckons with 1/58 Ω·mm²/m. With the
/// printed resistivity in place of ours each figure comes out to its last digit, so nothing else is behind the difference.
/// </summary>
public sealed class RoundedCopperTests
{
    private const double PrintedOhmSquareMillimetresPerMetre = 0.017241;
    private const double Share = PrintedOhmSquareMillimetresPerMetre / Conductor.CopperOhmSquareMillimetresPerMetre;

    public static TheoryData<string> Wires => [.. PrintedTables.All.SelectMany(table => table.Rows).Where(row => row.Id[0] == 'W' && row.Tolerance == "0.005 %").Select(row => row.Name)];

    public static TheoryData<string> Loads => [.. LoadCase.All.Keys];

    [Fact]
    public void The_printed_copper_is_0_0022_percent_below_ours() => Assert.Equal(-0.0022, 100 * (Share - 1), 0.00005);

    [Theory]
    [MemberData(nameof(Wires))]
    public void A_wire_of_the_printed_copper_agrees_to_the_last_digit(string name)
    {
        var printed = PrintedTables.All.SelectMany(table => table.Rows).Single(row => row.Name == name);
        Assert.True(printed.RoundsTo(ConductorFigures.Work(printed).Number!.Value * Share));
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void A_cable_of_the_printed_copper_agrees_to_the_last_digit(string id)
    {
        var load = LoadCase.All[id];
        var ohms = load.LoopOhms * Share;
        var point = ConstantPowerLoad.Solve(load.SourceVolts, ohms, load.LoadWatts);
        double?[] worked = [ohms, ConstantPowerLoad.MostWatts(load.SourceVolts, ohms), point?.LoadVolts, point?.Amperes, point?.LostWatts, point?.SourceWatts];
        var printed = PrintedTables.All.SelectMany(table => table.Rows).Where(row => row.Id == id).ToList();
        Assert.Equal(worked.Length, printed.Count);
        Assert.All(printed.Zip(worked), pair => Assert.True(
            pair.Second is { } number ? pair.First.RoundsTo(number) : pair.First.Expected == "none", $"{pair.First.Name}: {pair.Second}"));
    }
}

using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests;

public sealed class NgspiceTests
{
    private const double AllowedVolts = 0.0005;

    // Without an operating point the outside program ends on a meaningless voltage, so it is not asked.
    public static TheoryData<string> Cases => [.. LoadCase.All.Keys.Except(["LC-21", "LC-22"])];

    [Theory]
    [MemberData(nameof(Cases))]
    public async Task A_circuit_simulator_finds_the_same_voltage(string id)
    {
        Assert.SkipWhen(Ngspice.Program is null, "No program called ngspice is on the PATH; it would solve the case as a circuit.");
        var load = LoadCase.All[id];
        var volts = await Ngspice.LoadVolts(load, TestContext.Current.CancellationToken);
        Assert.Equal(volts, load.Solved!.Value.LoadVolts, AllowedVolts);
    }

    [Theory]
    [InlineData("LC-1", 4)]
    [InlineData("LC-7", 8)]
    [InlineData("LC-11", 8)]
    [InlineData("LC-12", 16)]
    public void Every_conductor_of_every_piece_is_a_resistor(string id, int resistors) => Assert.Equal(
        resistors, Ngspice.Circuit(LoadCase.All[id]).Split('\n').Count(line => line.StartsWith("Rout", StringComparison.Ordinal) || line.StartsWith("Rback", StringComparison.Ordinal)));
}

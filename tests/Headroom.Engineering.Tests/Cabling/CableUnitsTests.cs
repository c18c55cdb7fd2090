namespace Headroom.Engineering.Tests.Cabling;

/// <summary>The same site written in feet, inches and Fahrenheit or in metres, millimetres and Celsius gives the same ledger. All figures are invented.</summary>
public sealed class CableUnitsTests
{
    private const string Metric = "K-1: {from: closet, to: room, cable: plain, by: pipe, panel cord: 3.048 m of patch-26, device cord: 1.524 m of patch-28, bundle: 12, pieces: [{length: 30.48 m, ambient: 45 °C}, {length: 45.72 m, ambient: 20 °C}]}";
    private const string Imperial = "K-1: {from: closet, to: room, cable: plain, by: pipe, panel cord: 10 ft of patch-26, device cord: 5 ft of patch-28, bundle: 12, pieces: [{length: 100 ft, ambient: 113 F}, {length: 150 ft, ambient: 68 F}]}";
    private const string MetricPipe = "pathways: {pipe: {kind: conduit, inside: 26.67 mm, already: 2 x 5.08 mm, mains beside: 3 circuits of 16 A, barrier: none, apart: 50.8 mm, longest pull: 30.48 m, bends: 2, bend radius: 127 mm}}";
    private const string ImperialPipe = "pathways: {pipe: {kind: conduit, inside: 1.05 in, already: 2 x 0.2 in, mains beside: 3 circuits of 16 A, barrier: none, apart: 2 in, longest pull: 100 ft, bends: 2, bend radius: 5 in}}";

    [Fact]
    public void Both_ways_of_writing_give_one_ledger()
    {
        var (left, right) = (CableJob.Study(Metric, MetricPipe, policy: "{reserve: {length: 3.048 m}}"), CableJob.Study(Imperial, ImperialPipe, policy: "{reserve: {length: 10 ft}}"));
        Assert.Equal(left.Entries.Select(e => (e.Id, e.Studied)), right.Entries.Select(e => (e.Id, e.Studied)));
        Assert.All(left.Entries.Zip(right.Entries), pair => Assert.Equal(pair.First.Left ?? 0, pair.Second.Left ?? 0, 1e-6));
        Assert.Equal(left.Entries.SelectMany(e => e.Cautions), right.Entries.SelectMany(e => e.Cautions));
        Assert.Contains(left.Entries, entry => entry is { Id: "cabling/pipe/fill", Limit: not null });
    }
}

using System.Diagnostics;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

public sealed class CampusTests
{
    [Fact]
    public void A_campus_is_packed_near_the_bound()
    {
        var problem = Campus.Of(Long.On ? 2000 : 400, Long.On ? 40 : 8);
        var clock = Stopwatch.StartNew();
        var packed = Packer.Solve(problem, new PackEffort(Long.On ? 30 : 8));
        TestContext.Current.TestOutputHelper!.WriteLine($"{problem.Kinds.Count} groups: {packed.Cost}, bound {packed.Bound}, gap {packed.Gap:P2}, {clock.Elapsed.TotalSeconds:0.0} s");
        FitCheck.Holds(problem, packed);
        Assert.True(packed.Gap < 0.04, $"{packed.Gap:P2}");
    }
}

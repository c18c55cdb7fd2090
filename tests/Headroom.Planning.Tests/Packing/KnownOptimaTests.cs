using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

public sealed class KnownOptimaTests
{
    // Our own instances; the optimum proved by at least two outside solvers. Compared by what it costs only, as there are ties.
    [Theory]
    [InlineData("V1", 760)]
    [InlineData("V2", 400)]
    [InlineData("V3", 490)]
    [InlineData("V4", 50)]
    [InlineData("V5", 40)]
    [InlineData("V6a", 3)]
    [InlineData("V6b", 3)]
    [InlineData("V6c", 3)]
    [InlineData("V7", 1600)]
    [InlineData("V8", 1600)]
    public void Two_limits_come_to_the_known_optimum_and_it_is_proved(string id, long cost)
    {
        var packed = Packer.Solve(Instances.Named(id), PackEffort.Usual);
        Assert.Equal(cost, packed.Cost);
        Assert.True(packed.Proved);
        FitCheck.Holds(Instances.Named(id), packed);
    }

    // Martello and Toth, Johnson, Falkenauer, Chvatal and others, as held in the table of check values; each confirmed by an outside solver.
    public static TheoryData<string, long, int> OneLimit => new()
    {
        { "100: 70 60 50 33x3 11 7 3", 4, int.MaxValue },
        { "10: 6x5", 5, int.MaxValue },
        { "100: 51x6 27x6 26x6 23x12", 9, int.MaxValue },
        { "100: 51x12 27x12 26x12 23x24", 18, int.MaxValue },
        { "60: 44 24x2 22 21 17 8x2 6x2", 3, int.MaxValue },
        { "61: 44 24x2 22 21 17 8x2 6x2", 3, int.MaxValue },
        { "5600: 1380x22 1520x25 1560x12 1710x14 1820x18 1880x18 1930x20 2000x10 2050x12 2100x14 2140x16 2150x18 2200x20", 73, int.MaxValue },
        { "100: 45x97 36x610 31x395 14x211", 453, int.MaxValue },
        { "5180: 1120x9 1250x5 520x91 1066x18 1000x11 1150x64", 33, int.MaxValue },
        { "5180: 1120x9 1250x5 520x91 1066x18 1000x11 1150x64", 99, 2 },
        { Instances.T60, 20, int.MaxValue },
        { Instances.U120, 48, int.MaxValue },
    };

    [Theory, MemberData(nameof(OneLimit))]
    public void One_limit_comes_to_the_published_optimum_and_it_is_proved(string instance, long boxes, int ports)
    {
        var problem = Instances.Parse(instance, ports);
        var packed = Packer.Solve(problem, PackEffort.Usual);
        Assert.Equal(boxes, packed.Cost);
        Assert.True(packed.Proved);
        FitCheck.Holds(problem, packed);
    }
}

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
        { T60, 20, int.MaxValue },
        { U120, 48, int.MaxValue },
    };

    public const string T60 = "1000: 495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366x3 363 361 357 355 351 350x2 347 320 315 307 303 299 298x2 292 288 287 283 275x2 274 273x2 272x2 271 269x2 268 263 262 261 259 258 255 254 252x3 251";

    public const string U120 = "150: 98x3 96x2 94 93x2 92 91x2 90 87 86 85x2 84x5 83x2 82x2 81 80x3 79x2 78x4 76 74x2 73x4 72 71 70x3 69x3 67 66 64 62x2 60x2 59 58x3 57x4 55x3 50 49x3 47 46x2 45x2 44x2 43x4 42x5 41x3 39x2 38x3 37 36x3 35 33x3 32x2 30x3 29 28 27x2 26 25x2 24 23x2 20";

    [Theory, MemberData(nameof(OneLimit))]
    public void One_limit_comes_to_the_published_optimum_and_it_is_proved(string instance, long boxes, int ports)
    {
        var problem = Parse(instance, ports);
        var packed = Packer.Solve(problem, PackEffort.Usual);
        Assert.Equal(boxes, packed.Cost);
        Assert.True(packed.Proved);
        FitCheck.Holds(problem, packed);
    }

    public static PackProblem Parse(string instance, int ports)
    {
        var parts = instance.Split(": ");
        return Instances.OneLimit(long.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture), parts[1].Split(' ').Select(Load), ports);
    }

    private static (long, int) Load(string word)
    {
        var parts = word.Split('x').Select(part => int.Parse(part, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        return (parts[0], parts.Count > 1 ? parts[1] : 1);
    }
}

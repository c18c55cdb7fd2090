using Headroom.Engineering.Racking;

namespace Headroom.Engineering.Tests.Racking;

/// <summary>What holds of every search for places.</summary>
public sealed class RackFitTests
{
    private static readonly Gen<(int Height, int[] Filled, int[] Things)> Racks =
        Gen.Select(Gen.Int[1, 14], Gen.Int[1, 14].Array[0, 6], Gen.Int[1, 4].Array[0, 6]).Select((height, filled, things) => (height, filled, things));

    private static IReadOnlyList<int> Place((int Height, int[] Filled, int[] Things) rack) =>
        RackFit.Place(rack.Height, rack.Filled.ToHashSet(), [.. rack.Things.Select((fills, at) => (fills, at % 2 == 0))]);

    [Fact]
    public void No_two_things_share_a_unit_and_none_reaches_beyond_the_rack() => Racks.Sample(rack =>
    {
        var units = Place(rack).SelectMany((lowest, at) => lowest == 0 ? [] : Enumerable.Range(lowest, rack.Things[at])).Concat(rack.Filled.Where(unit => unit <= rack.Height).Distinct()).ToList();
        Assert.Equal(units.Count, units.Distinct().Count());
        Assert.All(units, unit => Assert.InRange(unit, 1, rack.Height));
    });

    // The other way to the figure: every order of first fit into the gaps.
    [Fact]
    public void No_order_of_filling_the_gaps_places_more_units() => Racks.Sample(rack =>
    {
        var placed = Place(rack).Select((lowest, at) => lowest > 0 ? rack.Things[at] : 0).Sum();
        Assert.Equal(Most(Gaps(rack), rack.Things, 0), placed);
    });

    [Fact]
    public void A_higher_rack_never_holds_less() => Racks.Sample(rack =>
    {
        int Units(int height) => Place(rack with { Height = height }).Select((lowest, at) => lowest > 0 ? rack.Things[at] : 0).Sum();
        Assert.True(Units(rack.Height) <= Units(rack.Height + 1) || rack.Filled.Contains(rack.Height + 1));
    });

    private static List<int> Gaps((int Height, int[] Filled, int[] Things) rack)
    {
        var gaps = new List<int>();
        var run = 0;
        for (var unit = 1; unit <= rack.Height + 1; unit++)
        {
            if (unit <= rack.Height && !rack.Filled.Contains(unit))
                run++;
            else if (run > 0)
                (run, _) = (0, Add(gaps, run));
        }

        return gaps;
    }

    private static int Add(List<int> gaps, int run)
    {
        gaps.Add(run);
        return run;
    }

    private static int Most(List<int> gaps, int[] things, int at)
    {
        if (at == things.Length)
            return 0;
        var most = Most(gaps, things, at + 1);
        for (var gap = 0; gap < gaps.Count; gap++)
        {
            if (gaps[gap] < things[at])
                continue;
            gaps[gap] -= things[at];
            most = Math.Max(most, things[at] + Most(gaps, things, at + 1));
            gaps[gap] += things[at];
        }

        return most;
    }
}

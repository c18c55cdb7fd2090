using Headroom.Domain.Quantities;
using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Sums.MeasuredDraws;

/// <summary>What many devices draw together when each is now idle, now busy.</summary>
internal static class DrawInStates
{
    private const double StepWatts = 0.1;

    private static readonly NumberInput Units = new("units", "how many devices", new(1, 200));
    private static readonly QuantityInput Idle = new("idle", "the draw of one that idles", Watts.Units, new(0.1, 100, "W"));
    private static readonly QuantityInput Busy = new("busy", "the draw of one that is busy", Watts.Units, new(0.1, 100, "W"));
    private static readonly QuantityInput Share = new("busy-share", "of the time in which one is busy", Headroom.Domain.Quantities.Share.Units, new(0, 100, "%"));
    private static readonly QuantityInput Kept = new("kept", "of the moments in which the watts are to be enough", Headroom.Domain.Quantities.Share.Units, new(50, 99.999, "%")) { Default = "99 %", DefaultWhy = "a guess of what is safe enough" };

    private static readonly SumOutput Together = new("together", "W", "that are enough");
    private static readonly SumOutput Mean = new("mean", "W", "of all together");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "draw-in-states",
        Discipline = MeasuredSums.Discipline,
        Answers = "what do many devices draw together when each is now idle, now busy?",
        Inputs = [Units, Idle, Busy, Share, Kept],
        Outputs = [Together, Mean],
        Formula = "chances of all sums by direct convolution in steps of 0.1 W; the least sum of which the share is kept",
        Source = "convolution of independent discrete distributions",
        Example = "units 18 idle 3.4 W busy 7.1 W busy-share 25 % kept 99.9 %",
        Work = given =>
        {
            var one = DrawGrid.OfStates([(given[Idle], 1 - given[Share]), (given[Busy], given[Share])], StepWatts);
            var all = one.Times((int)given[Units]);
            var together = all.Quantile(given[Kept]);
            return new SumAnswer($"{new Told(together, "W")} are enough.", [Together.Is(together), Mean.Is(all.MeanWatts)],
            [
                new("mean of one", $"(1 − {Words.Of(given[Share])}) · {Words.Of(given[Idle])} W + {Words.Of(given[Share])} · {Words.Of(given[Busy])} W", one.MeanWatts, "W"),
                new("mean of all", $"{Words.Of(given[Units])} · {Words.Of(one.MeanWatts)} W", all.MeanWatts, "W"),
                new("on top", "to the least sum of which the share is kept", together - all.MeanWatts, "W"),
            ]) { Notes = [$"Only for devices of which each goes its own way: at night all cameras light up together, and then all count as busy."] };
        },
    };
}

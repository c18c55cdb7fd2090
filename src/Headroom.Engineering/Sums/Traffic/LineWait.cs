using Headroom.Domain.Quantities;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>How long a frame waits before a full line.</summary>
internal static class LineWait
{
    private static readonly QuantityInput Load = new("load", "mean share of the line in use", Share.Units, new(0, 99, "%"));
    private static readonly QuantityInput Rate = new("rate", "rate of the line", BitsPerSecond.Units, new(0.1, 100_000, "Mb/s"));
    private static readonly NumberInput Frame = new("frame", "octets of a frame on the wire", new(84, 9100)) { Default = "1538", DefaultWhy = "a full frame with preamble and gap" };

    private static readonly SumOutput Stay = new("stay", "µs", "from arrival to the end of the frame, on average");
    private static readonly SumOutput Late = new("stay-99", "µs", "what 99 of 100 stay below");
    private static readonly SumOutput Times = new("frame-times", "", "the average in times of one frame");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "line-wait",
        Discipline = TrafficSums.Discipline,
        Answers = "how long does a frame wait before a line that is that full?",
        Inputs = [Load, Rate, Frame],
        Outputs = [Stay, Late, Times],
        Formula = "W = frame time / (1 − ρ); 99 of 100 below −ln 0.01 of that",
        Source = "M/M/1; Kleinrock, Queueing Systems, from memory",
        Example = "load 80 % rate 1 Gb/s",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var one = given[Frame] * 8 / given[Rate] * 1e6;
        var times = Queueing.StayOfRandom(given[Load]);
        var late = Queueing.StayQuantile(given[Load], 0.99) * one;
        return new SumAnswer(
            $"A frame takes {new Told(times * one, "µs")} on average, and 1 of 100 more than {new Told(late, "µs")}.",
            [Stay.Is(times * one), Late.Is(late), Times.Is(times)],
            [new("one frame", $"{Words.Of(given[Frame])} · 8 / {Words.Of(given[Rate] / 1e6)} Mb/s", one, "µs"), new("with the wait", "/ (1 − ρ)", times * one, "µs")])
        {
            Notes = [$"Real traffic is burstier than this: the sum shows why seven tenths of a line are its practical ceiling, and promises nothing."],
        };
    }
}

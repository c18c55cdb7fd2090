using Headroom.Domain.Quantities;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>How often the ports of a switch would fill its uplinks, and what it must pass on.</summary>
internal static class Oversubscribed
{
    private static readonly QuantityInput Ports = new("ports", "rates of the users' ports", BitsPerSecond.Units, new(0.01, 400, "Gb/s")) { IsList = true, ListExample = "24 x 1 Gb/s, 2 x 2.5 Gb/s" };
    private static readonly QuantityInput Uplinks = new("uplinks", "rates of the uplinks", BitsPerSecond.Units, new(0.01, 400, "Gb/s")) { IsList = true, ListExample = "2 x 10 Gb/s" };

    private static readonly SumOutput Ratio = new("ratio", "", "how often the ports would fill the uplinks");
    private static readonly SumOutput Capacity = new("capacity", "Gb/s", "switching capacity with all ports full, both ways");
    private static readonly SumOutput Frames = new("frames", "Mpps", "frames of 64 octets with all ports full");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "oversubscription",
        Discipline = TrafficSums.Discipline,
        Answers = "how often would the ports fill the uplinks, and what must the switch pass on?",
        Inputs = [Ports, Uplinks],
        Outputs = [Ratio, Capacity, Frames],
        Formula = "Σ ports / Σ uplinks; capacity = 2 Σ all; frames = Σ all / ((64 + 20) · 8)",
        Source = "common definition, no source; frames by IEEE 802.3, 4.4.2, from memory",
        Example = "ports 24 x 1 Gb/s uplinks 2 x 1 Gb/s",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (ports, uplinks) = (given.All(Ports), given.All(Uplinks));
        var ratio = SwitchCapacity.Oversubscription(ports, uplinks);
        var all = ports.Concat(uplinks).ToList();
        var (capacity, frames) = (SwitchCapacity.BothWaysBitsPerSecond(all) / 1e9, SwitchCapacity.FramesPerSecond(all) / 1e6);
        return new SumAnswer(
            $"The ports would fill the uplinks {new Told(ratio ?? 0, "times")} over; a switch that blocks nothing passes on {new Told(capacity, "Gb/s")}.",
            [Ratio.Is(ratio), Capacity.Is(capacity), Frames.Is(frames)],
            [
                new("ports", "the sum", ports.Sum() / 1e9, "Gb/s"),
                new("uplinks", "the sum", uplinks.Sum() / 1e9, "Gb/s"),
                new("capacity", "twice both", capacity, "Gb/s"),
            ]);
    }
}

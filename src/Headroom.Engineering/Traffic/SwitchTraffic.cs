using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>What goes through one switch and over its way to the line.</summary>
/// <param name="node">The switch in the tree.</param>
public sealed class SwitchTraffic(NetworkNode node)
{
    /// <summary>The switch in the tree.</summary>
    public NetworkNode Node => node;

    /// <summary>What hangs on it.</summary>
    internal TrafficMix Own { get; } = new();

    /// <summary>What hangs on it and on all behind it.</summary>
    internal TrafficMix Behind { get; } = new();

    /// <summary>Streams that its own devices send and take [bit/s].</summary>
    internal double OwnStreams { get; set; }

    /// <summary>Streams over its way to the line, away from it [bit/s].</summary>
    internal double StreamUp { get; set; }

    /// <summary>Streams over its way to the line, towards it [bit/s].</summary>
    internal double StreamDown { get; set; }

    /// <summary>What is asked of its way to the next switch.</summary>
    public TrafficDemand Uplink { get; internal set; }

    /// <summary>What is asked of the line, at a root with one.</summary>
    public TrafficDemand Line { get; internal set; }

    /// <summary>What goes in and out at all of its ports together [bit/s].</summary>
    public double ThroughBitsPerSecond { get; internal set; }

    /// <summary>Frames that go in at all of its ports together [1/s].</summary>
    public double FramesPerSecond { get; internal set; }
}

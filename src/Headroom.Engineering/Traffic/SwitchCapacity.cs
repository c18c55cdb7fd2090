namespace Headroom.Engineering.Traffic;

/// <summary>What a switch must pass on so that all its ports can run full.</summary>
public static class SwitchCapacity
{
    /// <summary>Data rate of all ports in one direction [bit/s]: the throughput that blocks nothing.</summary>
    /// <param name="portBitsPerSecond">Data rate of each port [bit/s]; each 0 or more.</param>
    /// <returns>The sum [bit/s].</returns>
    /// <remarks>Source: common definition, no source.</remarks>
    public static double OneWayBitsPerSecond(IEnumerable<double> portBitsPerSecond)
    {
        var sum = 0.0;
        foreach (var rate in portBitsPerSecond)
        {
            Require.AtLeast(0, rate, "bit/s");
            sum += rate;
        }

        return sum;
    }

    /// <summary>Data rate of all ports in both directions [bit/s]: what data sheets call switching capacity.</summary>
    /// <param name="portBitsPerSecond">Data rate of each port [bit/s]; each 0 or more.</param>
    /// <returns>Twice the sum [bit/s].</returns>
    /// <remarks>Source: common definition, no source.</remarks>
    public static double BothWaysBitsPerSecond(IEnumerable<double> portBitsPerSecond) => 2 * OneWayBitsPerSecond(portBitsPerSecond);

    /// <summary>Frames of 64 octets in a second when all ports receive them without a gap too many [1/s].</summary>
    /// <param name="portBitsPerSecond">Data rate of each port [bit/s]; each 0 or more.</param>
    /// <returns>Frames in a second, fractions kept.</returns>
    /// <remarks>Source: IEEE 802.3, 4.4.2, from memory.</remarks>
    public static double FramesPerSecond(IEnumerable<double> portBitsPerSecond) =>
        OneWayBitsPerSecond(portBitsPerSecond) / ((FrameRate.SmallestOctets + FrameRate.OverheadOctets) * 8);

    /// <summary>How often the ports of users would fill the uplinks [1].</summary>
    /// <param name="accessBitsPerSecond">Data rates of the users' ports [bit/s]; each 0 or more.</param>
    /// <param name="uplinkBitsPerSecond">Data rates of the uplinks [bit/s]; each 0 or more.</param>
    /// <returns>The ratio, 12 for 12:1; null without uplinks.</returns>
    /// <remarks>Source: common definition, no source.</remarks>
    public static double? Oversubscription(IEnumerable<double> accessBitsPerSecond, IEnumerable<double> uplinkBitsPerSecond)
    {
        var up = OneWayBitsPerSecond(uplinkBitsPerSecond);
        return up > 0 ? OneWayBitsPerSecond(accessBitsPerSecond) / up : null;
    }
}

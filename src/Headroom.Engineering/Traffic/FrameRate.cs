namespace Headroom.Engineering.Traffic;

/// <summary>How many Ethernet frames fit on a line, and what share of it they are.</summary>
public static class FrameRate
{
    /// <summary>What every frame takes on the line besides itself [octets]: 8 of preamble and start, 12 of gap. Source: IEEE 802.3, 4.4.2, from memory.</summary>
    public const int OverheadOctets = 20;

    /// <summary>The smallest frame, check sequence included [octets]. Source: IEEE 802.3; RFC 2544, 9.1.</summary>
    public const int SmallestOctets = 64;

    /// <summary>The largest untagged frame [octets]. Source: as <see cref="SmallestOctets"/>.</summary>
    public const int LargestOctets = 1518;

    /// <summary>Most frames in a second, whole ones.</summary>
    /// <param name="bitsPerSecond">Data rate [bit/s]; above 0.</param>
    /// <param name="octets">Size of a frame, check sequence included; 64 or more.</param>
    /// <returns>Frames in a second, the fraction cut off.</returns>
    /// <remarks>Source: IEEE 802.3, 4.4.2; sizes and cutting as RFC 2544, from memory.</remarks>
    public static double MostPerSecond(double bitsPerSecond, int octets)
    {
        Require.Above0(bitsPerSecond, "bit/s");
        Require.Between(SmallestOctets, int.MaxValue - OverheadOctets, octets);
        return Math.Floor(bitsPerSecond / ((octets + OverheadOctets) * 8.0));
    }

    /// <summary>Share of the line that frames of a size use [1].</summary>
    /// <param name="octets">Size of a frame, check sequence included; 64 or more.</param>
    /// <returns>Share [1].</returns>
    public static double ShareOfLine(int octets)
    {
        Require.Between(SmallestOctets, int.MaxValue - OverheadOctets, octets);
        return (double)octets / (octets + OverheadOctets);
    }

    /// <summary>Data that TCP carries over a full line of largest frames [bit/s].</summary>
    /// <param name="bitsPerSecond">Data rate [bit/s]; above 0.</param>
    /// <param name="payloadOctets">Payload of a frame: 1460 without options, 1448 with time stamps.</param>
    /// <returns>Payload [bit/s].</returns>
    /// <remarks>Source: IEEE 802.3, 4.4.2; headers of IPv4 and TCP (RFC 791, RFC 9293).</remarks>
    public static double TcpBitsPerSecond(double bitsPerSecond, int payloadOctets)
    {
        Require.Above0(bitsPerSecond, "bit/s");
        Require.Between(0, LargestOctets, payloadOctets);
        return bitsPerSecond * payloadOctets / (LargestOctets + OverheadOctets);
    }

    /// <summary>Data that packets carry over a full line, whatever their frame [bit/s].</summary>
    /// <param name="bitsPerSecond">Data rate [bit/s]; above 0.</param>
    /// <param name="payloadOctets">Payload of a frame; 0 or more.</param>
    /// <param name="frameOctets">The frame, check sequence and tag included [octets]; 64 or more.</param>
    /// <returns>Payload [bit/s].</returns>
    /// <remarks>Source: IEEE 802.3, 4.4.2, from memory.</remarks>
    public static double PayloadBitsPerSecond(double bitsPerSecond, int payloadOctets, int frameOctets)
    {
        Require.Above0(bitsPerSecond, "bit/s");
        Require.Between(SmallestOctets, int.MaxValue - OverheadOctets, frameOctets);
        Require.Between(0, frameOctets, payloadOctets);
        return bitsPerSecond * payloadOctets / (frameOctets + OverheadOctets);
    }
}

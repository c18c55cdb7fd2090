namespace Headroom.Engineering.Traffic;

/// <summary>What one direction of a call takes on the line.</summary>
public static class VoiceRate
{
    /// <summary>Headers of IPv4, UDP and RTP [octets]: 20, 8 and 12. Source: RFC 791, RFC 768, RFC 3550.</summary>
    public const int HeaderOctets = 40;

    /// <summary>The same with IPv6 [octets]. Source: RFC 8200, RFC 768, RFC 3550.</summary>
    public const int HeaderOctetsOfSix = 60;

    /// <summary>An Ethernet frame round a packet, check sequence included [octets]. Source: IEEE 802.3, clause 3, from memory.</summary>
    public const int FrameOctets = 18;

    /// <summary>A frame with its preamble and gap [octets]: what the line really loses. Source: IEEE 802.3, clause 3 and 4.4.2, from memory.</summary>
    public const int WireOctets = FrameOctets + FrameRate.OverheadOctets;

    /// <summary>One direction of an ordinary call, tagged, with preamble and gap [bit/s]: 64 kbit/s of speech in packets of 20 ms. Source: ITU-T G.711 with <see cref="BitsPerSecond"/>.</summary>
    public const double OrdinaryCall = 96_800;

    /// <summary>Packets of such a call in a second, each way [1/s]. Source: packets of 20 ms.</summary>
    public const double OrdinaryPackets = 50;

    /// <summary>Rate of one direction of a call [bit/s].</summary>
    /// <param name="codecBitsPerSecond">Rate of the coded speech itself [bit/s]; above 0.</param>
    /// <param name="packetSeconds">Speech in one packet [s]; above 0.</param>
    /// <param name="overheadOctets">All that goes round the speech in one packet [octets]; 0 or more.</param>
    /// <returns>The rate [bit/s].</returns>
    /// <remarks>Source: (payload + overhead) · 8 / packet time; headers of RFC 791, 768, 3550 and IEEE 802.3.</remarks>
    public static double BitsPerSecond(double codecBitsPerSecond, double packetSeconds, int overheadOctets)
    {
        Require.Above0(codecBitsPerSecond, "bit/s");
        Require.Above0(packetSeconds, "s");
        Require.Between(0, FrameRate.LargestOctets, overheadOctets);
        return codecBitsPerSecond + overheadOctets * 8 / packetSeconds;
    }
}

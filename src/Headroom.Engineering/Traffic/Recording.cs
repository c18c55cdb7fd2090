namespace Headroom.Engineering.Traffic;

/// <summary>How long pictures are kept on disks.</summary>
public static class Recording
{
    /// <summary>A terabyte, as disks are sold [octets]. Source: IEC 80000-13.</summary>
    public const double Terabyte = 1e12;

    /// <summary>A tebibyte, as many programs count [octets]. Source: IEC 80000-13.</summary>
    public const double Tebibyte = 1_099_511_627_776;

    private const double SecondsOfADay = 86_400;

    /// <summary>What is written in a day [octets].</summary>
    /// <param name="bitsPerSecond">Data rate of all pictures together [bit/s]; 0 or more.</param>
    /// <param name="writtenShare">Share of the time in which they are written [1]; above 0, at most 1.</param>
    /// <returns>Octets a day.</returns>
    /// <remarks>Source: rate · 86 400 s / 8; no source needed.</remarks>
    public static double OctetsADay(double bitsPerSecond, double writtenShare = 1)
    {
        Require.AtLeast(0, bitsPerSecond, "bit/s");
        Require.Share(writtenShare);
        return bitsPerSecond * writtenShare * SecondsOfADay / 8;
    }

    /// <summary>What disks hold, those for parity and the space kept free not counted [octets].</summary>
    /// <param name="disks">Disks; 1 or more.</param>
    /// <param name="parity">How many of them only guard against the loss of others; fewer than there are.</param>
    /// <param name="diskOctets">What one holds [octets]; above 0.</param>
    /// <param name="freeShare">Share that is kept free [1]; 0 or more, below 1.</param>
    /// <returns>Octets.</returns>
    /// <remarks>Source: (disks − parity) · size · (1 − free); common practice, no source.</remarks>
    public static double UsableOctets(int disks, int parity, double diskOctets, double freeShare)
    {
        Require.Between(1, 1000, disks);
        Require.Between(0, disks - 1, parity);
        Require.Above0(diskOctets, "octets");
        if (!(freeShare >= 0 && freeShare < 1))
            throw new ArgumentOutOfRangeException(nameof(freeShare), freeShare, FormattableString.Invariant($"freeShare is {freeShare}; it must be a share of 0 or more and below 1."));
        return (disks - parity) * diskOctets * (1 - freeShare);
    }

    /// <summary>How many days are kept.</summary>
    /// <param name="usableOctets">What the disks hold [octets]; 0 or more.</param>
    /// <param name="octetsADay">What is written in a day [octets/d]; above 0.</param>
    /// <returns>Days.</returns>
    /// <remarks>Source: quotient; no source needed.</remarks>
    public static double Days(double usableOctets, double octetsADay)
    {
        Require.AtLeast(0, usableOctets, "octets");
        Require.Above0(octetsADay, "octets/d");
        return usableOctets / octetsADay;
    }
}

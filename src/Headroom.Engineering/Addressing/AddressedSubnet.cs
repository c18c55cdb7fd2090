using Headroom.Domain.Addresses;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Addressing;

/// <summary>A subnet with its range and what is in it.</summary>
/// <param name="Subnet">The subnet as written.</param>
/// <param name="Devices">Devices with addresses of their own, in the order of the survey.</param>
/// <param name="Lent">How many addresses are to be lent out.</param>
/// <param name="Planned">For how many it is made, growth and router included.</param>
/// <param name="Range">Its range; null when no place is free, or there is nothing to take it from.</param>
/// <param name="Six">Its range of version 6; null when there is none.</param>
public sealed record AddressedSubnet(Subnet Subnet, IReadOnlyList<AddressedDevice> Devices, int Lent, long Planned, Ip4Range? Range, Ip6Range? Six)
{
    /// <summary>Devices of today: those with addresses of their own, those lent to, and the router.</summary>
    public int Today => Devices.Count + Lent + 1;

    /// <summary>The router's address: the first; null without a range.</summary>
    public Ip4? Router => Range?.At(1);

    /// <summary>The first and last address that is lent out, at the end of the range, so that devices can be added before it; null when none is.</summary>
    public (Ip4 First, Ip4 Last)? Pool
    {
        get
        {
            if (Range is not { } range || Lent == 0 || Lent + 1 > range.Hosts)
                return null;
            var last = range.Size - 2;
            return (range.At(last - Lent + 1), range.At(last));
        }
    }
}

namespace Headroom.Domain.Jobs;

/// <summary>What a switch sets aside for a powered port in use.</summary>
public enum ReservesBy
{
    /// <summary>The watts of the granted class (IEEE 802.3).</summary>
    Class,

    /// <summary>The limit set for the port, else the most the port can give.</summary>
    PortLimit,

    /// <summary>What was negotiated over LLDP; class where a device does not negotiate.</summary>
    Negotiated,

    /// <summary>What the port gives at the moment.</summary>
    Measured,

    /// <summary>The most that was measured in the first seconds, plus a margin (IEEE 802.3 clause 145); class where a device does not take part.</summary>
    Autoclass,
}

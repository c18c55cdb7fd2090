namespace Headroom.Domain.Jobs;

/// <summary>Which end's watts are set aside after negotiation.</summary>
public enum NegotiatedCounts
{
    /// <summary>The port's: the device's figure and the worst loss of its class.</summary>
    Port,

    /// <summary>The device's figure itself.</summary>
    Device,
}

namespace Headroom.Domain.Jobs;

/// <summary>What a switch sets aside for a port that has just come up.</summary>
public enum AtStart
{
    /// <summary>The watts of the granted class.</summary>
    Class,

    /// <summary>The limit set for the port, else the most the port can give.</summary>
    PortLimit,

    /// <summary>Nothing: what the device draws while it starts counts.</summary>
    Draw,
}

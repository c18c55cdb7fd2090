namespace Headroom.Engineering.Power;

/// <summary>The watts of one switch in one state under one setting.</summary>
/// <param name="State">The state.</param>
/// <param name="DemandWatts">What all its ports ask together, the known part of it where some is not known [W].</param>
/// <param name="Known">How many ports are known.</param>
/// <param name="All">How many ports ask.</param>
/// <param name="Dark">The ports that stay dark or are dropped, in the order in which it happens.</param>
/// <param name="Waves">True when refused ports come up later, after others have settled.</param>
public sealed record StateAccount(PowerState State, double DemandWatts, int Known, int All, IReadOnlyList<PoweredPort> Dark, bool Waves)
{
    /// <summary>The least with which all come up, in waves if need be [W].</summary>
    public double LeastWatts { get; init; } = DemandWatts;

    /// <summary>What all ask at once [W].</summary>
    public double AtOnceWatts { get; init; } = DemandWatts;

    /// <summary>True when no part is missing.</summary>
    public bool Whole => Known == All;
}

namespace Headroom.Engineering.Power;

/// <summary>What a switch does with the ports that come after one it could not serve.</summary>
public enum AtRefusal
{
    /// <summary>It goes on: a smaller ask further on may still fit.</summary>
    Skip,

    /// <summary>It stops: every later port stays without power too.</summary>
    Stop,
}

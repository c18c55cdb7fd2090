namespace Headroom.Domain.Catalogues;

/// <summary>What a device does when the port grants a lower class than it asks for.</summary>
public enum WhenDemoted
{
    /// <summary>It keeps within the lower class and does less.</summary>
    Runs,

    /// <summary>It does not start.</summary>
    StaysDark,
}

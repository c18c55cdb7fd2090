namespace Headroom.Engineering.Cabling;

/// <summary>How well a cable is proof against mains beside it. Source: EN 50174-2.</summary>
public enum SeparationClass
{
    /// <summary>Less than category 5e, or nothing known: from memory.</summary>
    A,

    /// <summary>Unscreened cable of category 5e, 6 or 6A.</summary>
    B,

    /// <summary>Screened cable of category 5e, 6 or 6A.</summary>
    C,

    /// <summary>Cable of category 7 or 7A.</summary>
    D,
}

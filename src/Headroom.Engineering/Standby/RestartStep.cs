namespace Headroom.Engineering.Standby;

/// <summary>What the ports of a unit take together from a moment on, for a drawing.</summary>
/// <param name="Seconds">From when, counted from the mains coming back [s].</param>
/// <param name="Watts">What they take until the next step [W].</param>
public readonly record struct RestartStep(double Seconds, double Watts);

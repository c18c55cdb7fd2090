namespace Headroom.Engineering.Standby;

/// <summary>The most that ports take together while devices start.</summary>
/// <param name="Watts">The watts, charging of inputs included, the known part where some is not known [W].</param>
/// <param name="Seconds">When, from the mains coming back [s].</param>
/// <param name="Whole">True when every draw is known.</param>
public sealed record RestartPeak(double Watts, double Seconds, bool Whole);

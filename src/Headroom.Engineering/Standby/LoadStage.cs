namespace Headroom.Engineering.Standby;

/// <summary>A load from a moment on.</summary>
/// <param name="FromSeconds">When it begins, from the start of the outage [s]; 0 for the first.</param>
/// <param name="Watts">The load [W].</param>
public readonly record struct LoadStage(double FromSeconds, double Watts);

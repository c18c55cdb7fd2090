namespace Headroom.Engineering.Power;

/// <summary>How a source watches for a device that has gone.</summary>
/// <param name="ValidSeconds">Shortest load that the source must take as a sign [s].</param>
/// <param name="DropSecondsMin">Time without a sign before which it may not remove power [s].</param>
/// <param name="DropSecondsMax">Time without a sign by which it must have removed power [s].</param>
public sealed record KeepAliveTimes(double ValidSeconds, double DropSecondsMin, double DropSecondsMax);

using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>A port whose passive voltage is on, and something on it that is not meant for it or not known.</summary>
/// <param name="Port">The port.</param>
/// <param name="Endpoint">What hangs on it; null when nobody knows.</param>
/// <param name="Volts">The voltage on the pins [V].</param>
public sealed record LivePin(BoundPatch Port, BoundEndpoint? Endpoint, double Volts);

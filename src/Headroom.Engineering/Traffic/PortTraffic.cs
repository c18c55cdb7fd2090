using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>What one endpoint asks of its port.</summary>
/// <param name="Endpoint">The endpoint.</param>
/// <param name="Demand">What it asks; null when not known.</param>
/// <param name="BitsPerSecond">At which rate its link runs [bit/s]; null when not known.</param>
public sealed record PortTraffic(BoundEndpoint Endpoint, TrafficDemand? Demand, double? BitsPerSecond);

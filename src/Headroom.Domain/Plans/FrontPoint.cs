namespace Headroom.Domain.Plans;

/// <summary>A design of which no other is better in cost, sound and room at once.</summary>
/// <param name="Bought">What is bought, in words.</param>
/// <param name="Total">What it costs in all.</param>
/// <param name="Loudest">The equipment alone at the ear that hears it most [dB(A)]; null when nobody listens or it is not known.</param>
/// <param name="FreePorts">Copper ports left free.</param>
/// <param name="FreePowered">Ports that give power, left free.</param>
public sealed record FrontPoint(string Bought, decimal Total, double? Loudest, int FreePorts, int FreePowered);

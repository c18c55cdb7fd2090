namespace Headroom.Engineering.Standby;

/// <summary>One thing that a service waits for after an outage.</summary>
/// <param name="What">What, in words.</param>
/// <param name="Seconds">When it is there, from the mains coming back [s]; null when not known.</param>
public sealed record BackPart(string What, double? Seconds);

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>One link of a switch towards the line, seen from the switch.</summary>
/// <param name="Uplink">The link as written.</param>
/// <param name="Near">Its port on the switch.</param>
/// <param name="Far">The port of the other switch, or the name of the line.</param>
/// <param name="BitsPerSecond">What it carries each way [bit/s]; null when not known.</param>
/// <param name="Assumed">True when a module is not written and the slowest rate of its port was taken.</param>
public sealed record SwitchLink(Uplink Uplink, PortRef Near, PortRef Far, double? BitsPerSecond, bool Assumed);

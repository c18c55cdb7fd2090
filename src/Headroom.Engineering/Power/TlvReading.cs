namespace Headroom.Engineering.Power;

/// <summary>What came of reading an LLDP element: a body, or a finding that says why there is none.</summary>
/// <param name="Body">What the element says; null when it could not be read.</param>
/// <param name="Finding">What is wrong with the octets; null when they could be read.</param>
public sealed record TlvReading(PowerTlvBody? Body, string? Finding);

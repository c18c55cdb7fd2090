namespace Headroom.Engineering.Power;

/// <summary>What one LLDP power element says: <see cref="PowerViaMdi"/>, <see cref="MedPower"/> or <see cref="MedCapabilities"/>.</summary>
public abstract record PowerTlvBody;

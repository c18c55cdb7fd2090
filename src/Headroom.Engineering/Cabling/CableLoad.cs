namespace Headroom.Engineering.Cabling;

/// <summary>The current that a cable carries to the device behind it, handed on from the study of power.</summary>
/// <param name="ConductorAmperes">Current in each conductor that carries any [A].</param>
/// <param name="Conductors">Conductors that carry it: 4 on two pairs, 8 on four.</param>
/// <param name="Watts">Watts at the port [W].</param>
public sealed record CableLoad(double ConductorAmperes, int Conductors, double Watts);

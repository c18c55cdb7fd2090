namespace Headroom.Engineering.Heat;

/// <summary>One unit in one named case: the loop of inlet, fan level, flow and heat, settled.</summary>
/// <param name="Name">The case.</param>
/// <param name="Celsius">The air of the place it stands in [°C], that of its cabinet included.</param>
/// <param name="Inlet">The air at its inlet in an ordinary hour [°C].</param>
/// <param name="MostInlet">The same at its most [°C].</param>
/// <param name="Fan">Fan level, flow and rise in an ordinary hour.</param>
public sealed record UnitCase(string Name, double Celsius, double Inlet, double MostInlet, FanState Fan);

namespace Headroom.Engineering.Heat;

/// <summary>A unit's fans and its air in one case.</summary>
/// <param name="Level">The fan level; 0 where it has none that is known.</param>
/// <param name="Flow">The air it moves [m³/s]; null when not known.</param>
/// <param name="Rise">How much warmer the air leaves it [K]; null when not known.</param>
/// <param name="Returned">How much warmer its inlet is for what comes back [K]; 0 where that could not be counted.</param>
/// <param name="Settles">False when the fans go up and down between two levels.</param>
public sealed record FanState(int Level, double? Flow, double? Rise, double Returned, bool Settles);

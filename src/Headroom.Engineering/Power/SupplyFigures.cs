namespace Headroom.Engineering.Power;

/// <summary>What a supply takes from the mains and leaves in its space, in an ordinary hour and at its most.</summary>
/// <param name="BaseWatts">What the device draws itself, behind the supply [W]; null when not known.</param>
/// <param name="TypicalPortWatts">What the ports give in an ordinary hour [W]; null when a draw is not known.</param>
/// <param name="WorstPortWatts">What the ports give at their most [W]; null likewise.</param>
/// <param name="PathEfficiency">Share of the port watts that reaches the ports [1].</param>
/// <param name="Typical">Taken and left in an ordinary hour; null when something is not known.</param>
/// <param name="Worst">Taken and left at the most; null likewise.</param>
/// <param name="Question">What is to be found out; null when nothing.</param>
public sealed record SupplyFigures(
    double? BaseWatts,
    double? TypicalPortWatts,
    double? WorstPortWatts,
    double PathEfficiency,
    SupplyPoint? Typical,
    SupplyPoint? Worst,
    string? Question);

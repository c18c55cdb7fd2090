namespace Headroom.Engineering.Power;

/// <summary>How a budget was handed out.</summary>
/// <param name="Granted">For each ask, in the order given, whether it was served.</param>
/// <param name="GrantedWatts">Sum of the asks served [W].</param>
/// <param name="LeftWatts">What is left of the budget [W]; below 0 by rounding alone, at most a nanowatt.</param>
public sealed record BudgetFill(bool[] Granted, double GrantedWatts, double LeftWatts);

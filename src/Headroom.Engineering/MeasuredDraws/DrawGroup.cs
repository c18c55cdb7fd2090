namespace Headroom.Engineering.MeasuredDraws;

/// <summary>Units of one model in one mode on one switch.</summary>
/// <param name="Fitted">The model with its readings.</param>
/// <param name="Units">How many.</param>
/// <param name="MostWatts">What their ports grant together [W].</param>
public sealed record DrawGroup(FittedDraw Fitted, int Units, double MostWatts);

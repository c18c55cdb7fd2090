namespace Headroom.Engineering.Power;

/// <summary>A supply at one load.</summary>
/// <param name="OutputWatts">What it gives [W].</param>
/// <param name="LoadShare">That as a share of its rated output [1]; null when the rated output is not known.</param>
/// <param name="Efficiency">Its efficiency there [1], 0 to 1.</param>
/// <param name="MainsWatts">What it takes [W].</param>
/// <param name="HeatWatts">What stays in the space: all it takes less what leaves on the cables [W].</param>
public sealed record SupplyPoint(double OutputWatts, double? LoadShare, double Efficiency, double MainsWatts, double HeatWatts);

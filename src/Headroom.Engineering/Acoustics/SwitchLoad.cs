namespace Headroom.Engineering.Acoustics;

/// <summary>What a switch's ports give: handed on from the power study, for the fans follow it.</summary>
/// <param name="TypicalWatts">In an ordinary hour [W]; null when not known.</param>
/// <param name="WorstWatts">At their most [W]; null when not known.</param>
public sealed record SwitchLoad(double? TypicalWatts, double? WorstWatts)
{
    /// <summary>Nothing is known of it.</summary>
    public static SwitchLoad NotKnown { get; } = new(null, null);
}

namespace Headroom.Engineering.Heat;

/// <summary>What something leaves as heat where it stands, handed on from the study of power.</summary>
/// <param name="OrdinaryWatts">In an ordinary hour [W]; null when not known.</param>
/// <param name="MostWatts">At its most [W]; null likewise.</param>
/// <param name="Origin">Where the figures come from, in words.</param>
public sealed record HeatLoad(double? OrdinaryWatts, double? MostWatts, string Origin)
{
    /// <summary>Nothing is left there.</summary>
    public static HeatLoad Nothing { get; } = new(0, 0, "nothing counted");

    /// <summary>What is to be found out; null when both are known.</summary>
    public string? Question { get; init; }

    /// <summary>What its ports give, in an ordinary hour and at their most [W]; null when not known or without ports.</summary>
    public (double? Ordinary, double? Most) Ports { get; init; }

    /// <summary>Both together.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>The sum; not known where one of them is not.</returns>
    public HeatLoad And(HeatLoad other) => new(OrdinaryWatts + other.OrdinaryWatts, MostWatts + other.MostWatts, Origin == Nothing.Origin ? other.Origin : Origin)
    {
        Question = Question ?? other.Question,
    };
}

namespace Headroom.Engineering.Racking;

/// <summary>A unit that is stacked on another.</summary>
/// <param name="Thing">The upper one.</param>
/// <param name="Below">The lower one.</param>
public sealed record Stacked(RackThing Thing, RackThing Below)
{
    /// <summary>The gap between two units that air needs [mm]. Source: common practice, no source.</summary>
    public const double GapMillimetres = 3;

    /// <summary>The feet of the upper one [mm]; null when not known.</summary>
    public double? FeetMillimetres => 1000 * Thing.Body?.Feet?.Value.Value;
}

using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.Power;

/// <summary>What a port puts on the cable.</summary>
/// <param name="Type">The type of port power; null when passive or none.</param>
/// <param name="Passive">The passive output; null when of a type or none.</param>
/// <param name="DeclaredVolts">The voltage the supply or passive output declares [V]; null when the standard's least counts.</param>
/// <param name="SpreadVolts">Half the interval of that voltage [V]; 0 when none was written.</param>
/// <param name="VoltsOrigin">Where the voltage comes from, in words.</param>
/// <param name="LimitWatts">The limit set for the port [W]; null when none is set.</param>
/// <param name="LimitOrigin">Where the limit comes from, in words.</param>
public sealed record PortFeed(
    PoeType? Type,
    PassiveOutput? Passive,
    double? DeclaredVolts,
    double SpreadVolts,
    string VoltsOrigin,
    double? LimitWatts,
    string LimitOrigin)
{
    /// <summary>A port that gives no power.</summary>
    public static PortFeed None { get; } = new(null, null, null, 0, "", null, "");
}

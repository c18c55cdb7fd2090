using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>What a port puts on the cable. Kept small: there is one for every port.</summary>
/// <param name="Type">The type of port power; null when passive or none.</param>
/// <param name="Passive">The passive output; null when of a type or none.</param>
/// <param name="Volts">The voltage the supply or passive output declares [V]; null when the standard's least counts.</param>
/// <param name="Limit">The limit set for the port [W]; null when none is set.</param>
public sealed record PortFeed(PoeType? Type, PassiveOutput? Passive, Given<Volts>? Volts, Given<Watts>? Limit)
{
    /// <summary>A port that gives no power.</summary>
    public static PortFeed None { get; } = new(null, null, null, null);

    /// <summary>The voltage that is declared [V]; null when the standard's least counts.</summary>
    public double? DeclaredVolts => Volts?.Value.Value;

    /// <summary>Half the interval of that voltage [V]; 0 when none was written.</summary>
    public double SpreadVolts => Volts?.PlusMinus ?? 0;

    /// <summary>Where the voltage comes from, in words.</summary>
    public string VoltsOrigin => Volts is not null ? Origins.Of(Volts) : Type is not null ? "standard, the least of its type" : "";

    /// <summary>The limit set for the port [W]; null when none is set.</summary>
    public double? LimitWatts => Limit?.Value.Value;

    /// <summary>Where the limit comes from, in words.</summary>
    public string LimitOrigin => Origins.Of(Limit);
}

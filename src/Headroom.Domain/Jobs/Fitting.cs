using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Something in a rack that has no figures of power: a panel, a cable manager, a shelf, a strip of mains outlets, a blank.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Kind">panel, manager, shelf, outlets, blank or other.</param>
/// <param name="Standing">Where it is.</param>
/// <param name="Height">Its height [U]; null when not written.</param>
/// <param name="Depth">Its depth [m]; null when not written.</param>
/// <param name="Weight">Its mass [kg]; null when not written.</param>
/// <param name="Places">How many ports, outlets or cords it has or takes; null when not written.</param>
/// <param name="Most">The current that a strip of outlets may carry [A]; null when not written.</param>
/// <param name="Volts">The mains voltage at it [V]; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Fitting(
    string Id,
    string Kind,
    Standing Standing,
    Given<RackUnits>? Height,
    Given<Metres>? Depth,
    Given<Kilograms>? Weight,
    int? Places,
    Given<Amperes>? Most,
    Given<Volts>? Volts,
    Place At)
{
    /// <summary>What one costs the firm; null when not known.</summary>
    public Given<Money>? Price { get; init; }
}

using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>What every thing that stands somewhere has: size, weight, what air it bears, what it costs.</summary>
/// <param name="Id">The invented name.</param>
/// <param name="About">One line in words; null when not written.</param>
/// <param name="Width">Width [m]; null when not known.</param>
/// <param name="Height">Height [m]; null when not known.</param>
/// <param name="Depth">Depth without plugs [m]; null when not known.</param>
/// <param name="Units">Height in a rack [U]; null when it does not go into one or is not known.</param>
/// <param name="Ears">fixed, loose or none; null when not known.</param>
/// <param name="Weight">Mass [kg]; null when not known.</param>
/// <param name="LeastAmbient">The coldest air it is rated for [°C]; null when not known.</param>
/// <param name="MostAmbient">The warmest air at the inlet it is rated for [°C]; null when not known.</param>
/// <param name="MostAltitude">The greatest height above the sea it is rated for [m]; null when not known.</param>
/// <param name="Price">What one costs; null when not known.</param>
/// <param name="At">Where it stands in the catalogue file.</param>
public sealed record Body(
    string Id,
    string? About,
    Given<Metres>? Width,
    Given<Metres>? Height,
    Given<Metres>? Depth,
    Given<RackUnits>? Units,
    string? Ears,
    Given<Kilograms>? Weight,
    Given<Celsius>? LeastAmbient,
    Given<Celsius>? MostAmbient,
    Given<Metres>? MostAltitude,
    Given<Money>? Price,
    Place At)
{
    /// <summary>Mean time between failures as its maker declares it [s]; null when not known.</summary>
    public Given<Seconds>? BetweenFailures { get; init; }

    /// <summary>How long its maker or seller stands in for it [s]; null when not known.</summary>
    public Given<Seconds>? Warranty { get; init; }

    /// <summary>Height of its feet, which keep a gap free below it [m]; null when not known, 0 for none.</summary>
    public Given<Metres>? Feet { get; init; }
}

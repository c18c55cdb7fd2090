using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A four-pair copper cable or cord.</summary>
/// <param name="Body">Price and place; size fields are not used.</param>
/// <param name="Category">The category of the cabling standard, such as <c>6A</c>; null when not known.</param>
/// <param name="Conductor">Cross-section of one conductor [mm²]; null when not known.</param>
/// <param name="Conductivity">Conductivity as a share of annealed copper (IACS); null for copper.</param>
/// <param name="CopperClad">True for aluminium or steel with a copper skin, which the cabling standards do not allow.</param>
/// <param name="Screened">True when it has a screen; null when not known.</param>
/// <param name="Stranded">True for a cord; false for solid conductors.</param>
/// <param name="Diameter">Outer diameter [m]; null when not known.</param>
/// <param name="MostTemperature">The warmest it may become [°C]; null when not known.</param>
public sealed record CableModel(
    Body Body,
    string? Category,
    Given<SquareMillimetres>? Conductor,
    Given<Share>? Conductivity,
    bool CopperClad,
    bool? Screened,
    bool Stranded,
    Given<Metres>? Diameter,
    Given<Celsius>? MostTemperature)
{
    /// <summary>The tightest it may be bent once it lies [m]; null for the rule of the standards, four diameters.</summary>
    public Given<Metres>? BendRadius { get; init; }

    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}

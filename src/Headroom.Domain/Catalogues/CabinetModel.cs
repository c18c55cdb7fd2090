using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A cabinet, open frame or shelf.</summary>
/// <param name="Body">Outer size, weight, price.</param>
/// <param name="Kind">cabinet, frame or shelf.</param>
/// <param name="Inside">Rack units inside, or that a shelf takes [U]; null when not known.</param>
/// <param name="UsableDepth">Depth from the front rail to what is behind [m]; null when not known.</param>
/// <param name="Load">The most it may carry [kg]; null when not known.</param>
/// <param name="VentArea">Free area of its vents [m²]; null when not known.</param>
/// <param name="InsertionLoss">How much quieter things are inside it [dB]; null when not known.</param>
public sealed record CabinetModel(
    Body Body,
    string Kind,
    Given<RackUnits>? Inside,
    Given<Metres>? UsableDepth,
    Given<Kilograms>? Load,
    Given<SquareMetres>? VentArea,
    Given<Decibels>? InsertionLoss)
{
    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}

using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A fibre cable.</summary>
/// <param name="Body">Price and place; size fields are not used.</param>
/// <param name="Category">The fibre category of the standards: OM1 to OM5, OS1a, OS2.</param>
/// <param name="Fibres">How many fibres; null when not known.</param>
/// <param name="LossPerKilometre">Most loss by wavelength [dB/km].</param>
public sealed record FibreModel(
    Body Body,
    string Category,
    int? Fibres,
    IReadOnlyDictionary<int, Given<Decibels>> LossPerKilometre)
{
    /// <summary>Outer diameter [m]; null when not known.</summary>
    public Given<Metres>? Diameter { get; init; }

    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}

using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at a pathway.</summary>
/// <param name="Id">The pathway.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record PathwayChange(string Id, Place At)
{
    /// <summary>Inner diameter of the conduit [m]; null for the same.</summary>
    public Given<Metres>? Inside { get; init; }

    /// <summary>Inner cross-section of the tray or trunking [m²]; null for the same.</summary>
    public Given<SquareMetres>? Area { get; init; }

    /// <summary>What lies between it and the mains; null for the same.</summary>
    public string? Barrier { get; init; }

    /// <summary>Gap between its cables and the mains [m]; null for the same.</summary>
    public Given<Metres>? Apart { get; init; }

    /// <summary>Air temperature along it [°C]; null for the same.</summary>
    public Given<Celsius>? Ambient { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public PathwayChange Over(PathwayChange other) => this with
    {
        Inside = Inside ?? other.Inside,
        Area = Area ?? other.Area,
        Barrier = Barrier ?? other.Barrier,
        Apart = Apart ?? other.Apart,
        Ambient = Ambient ?? other.Ambient,
    };

    /// <summary>The pathway with the change.</summary>
    /// <param name="pathway">The pathway as surveyed.</param>
    /// <returns>The pathway as it is then.</returns>
    public Pathway In(Pathway pathway) => pathway with
    {
        Inside = Inside ?? pathway.Inside,
        Area = Area ?? pathway.Area,
        Barrier = Barrier ?? pathway.Barrier,
        Apart = Apart ?? pathway.Apart,
        Ambient = Ambient ?? pathway.Ambient,
    };
}

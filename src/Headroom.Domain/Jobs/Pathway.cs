using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A way that cables take together.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Kind">conduit, tray, trunking, or ceiling.</param>
/// <param name="Inside">Inner diameter of a conduit [m]; null when not surveyed or not a conduit.</param>
/// <param name="Area">Inner cross-section of a tray or trunking [m²]; null when not surveyed.</param>
/// <param name="Already">Cables that lie in it already, as count and diameter; empty when nothing does, null when not surveyed.</param>
/// <param name="MainsBeside">Mains circuits beside it; empty when there are none, null when not surveyed.</param>
/// <param name="Barrier">What lies between it and the mains: none, plastic, basket, perforated metal, aluminium, steel; null when not surveyed.</param>
/// <param name="Ambient">Air temperature along it [°C]; null when not surveyed.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Pathway(
    string Id,
    string Kind,
    Given<Metres>? Inside,
    Given<SquareMetres>? Area,
    IReadOnlyList<LyingCables>? Already,
    IReadOnlyList<MainsCircuits>? MainsBeside,
    string? Barrier,
    Given<Celsius>? Ambient,
    Place At)
{
    /// <summary>Gap between its cables and the mains beside it [m]; null when not surveyed.</summary>
    public Given<Metres>? Apart { get; init; }

    /// <summary>The longest stretch between two points from which a cable can be pulled [m]; null when not surveyed.</summary>
    public Given<Metres>? LongestPull { get; init; }

    /// <summary>The most right-angle bends between two such points; null when not surveyed.</summary>
    public int? Bends { get; init; }

    /// <summary>Radius of the tightest bend [m]; null when not surveyed.</summary>
    public Given<Metres>? BendRadius { get; init; }
}

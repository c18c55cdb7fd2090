using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A way that cables take together.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Kind">conduit, tray, trunking, or ceiling.</param>
/// <param name="Inside">Inner diameter of a conduit [m]; null when not surveyed or not a conduit.</param>
/// <param name="Area">Inner cross-section of a tray or trunking [m²]; null when not surveyed.</param>
/// <param name="Already">Cables that lie in it already, as count and diameter.</param>
/// <param name="MainsBeside">Mains circuits beside it, as written; null when not surveyed.</param>
/// <param name="Barrier">What lies between it and the mains: none, plastic, aluminium, steel; null when not surveyed.</param>
/// <param name="Ambient">Air temperature along it [°C]; null when not surveyed.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Pathway(
    string Id,
    string Kind,
    Given<Metres>? Inside,
    Given<SquareMetres>? Area,
    IReadOnlyList<LyingCables> Already,
    string? MainsBeside,
    string? Barrier,
    Given<Celsius>? Ambient,
    Place At);

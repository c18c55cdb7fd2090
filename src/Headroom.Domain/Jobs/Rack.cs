using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A rack or wall cabinet.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="In">The space it stands in.</param>
/// <param name="Height">Usable height [U]; null when not surveyed.</param>
/// <param name="Depth">Usable depth behind the front rails [m]; null when not surveyed.</param>
/// <param name="Load">The most it may carry [kg]; null when not known.</param>
/// <param name="PlugsBehind">Depth that plugs and cables need behind a unit [m]; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Rack(
    string Id,
    string In,
    Given<RackUnits>? Height,
    Given<Metres>? Depth,
    Given<Kilograms>? Load,
    Given<Metres>? PlugsBehind,
    Place At)
{
    /// <summary>The cabinet model it is; null when not written, or an open frame.</summary>
    public string? Cabinet { get; init; }

    /// <summary>Room between the front rails and a door, for plugs and cords [m]; null for no door, or when not surveyed.</summary>
    public Given<Metres>? Front { get; init; }

    /// <summary>What it is fixed to: floor, wall or nothing; null when not written.</summary>
    public string? Fixed { get; init; }

    /// <summary>The most that its screws and the wall hold [kg]; null when not known.</summary>
    public Given<Kilograms>? FixingLoad { get; init; }

    /// <summary>Mains outlets in it or beside it that are free; null when not surveyed.</summary>
    public int? Outlets { get; init; }

    /// <summary>Where its middle is in the space [m]; null when not surveyed.</summary>
    public Given<Spot>? Spot { get; init; }

    /// <summary>Whether its empty units are closed by panels, so that warm air does not come back to the front; null when not written.</summary>
    public bool? Blanked { get; init; }
}

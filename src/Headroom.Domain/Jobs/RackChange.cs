using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at a rack.</summary>
/// <param name="Id">The rack.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record RackChange(string Id, Place At)
{
    /// <summary>The cabinet model it is then; null for the same.</summary>
    public string? Cabinet { get; init; }

    /// <summary>Usable height [U]; null for the same.</summary>
    public Given<RackUnits>? Height { get; init; }

    /// <summary>Usable depth behind the front rails [m]; null for the same.</summary>
    public Given<Metres>? Depth { get; init; }

    /// <summary>The most it may carry [kg]; null for the same.</summary>
    public Given<Kilograms>? Load { get; init; }

    /// <summary>Whether its empty units are closed by panels; null for the same.</summary>
    public bool? Blanked { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public RackChange Over(RackChange other) => this with
    {
        Cabinet = Cabinet ?? other.Cabinet,
        Height = Height ?? other.Height,
        Depth = Depth ?? other.Depth,
        Load = Load ?? other.Load,
        Blanked = Blanked ?? other.Blanked,
    };

    /// <summary>The rack with the change.</summary>
    /// <param name="rack">The rack as surveyed.</param>
    /// <returns>The rack as it is then.</returns>
    public Rack In(Rack rack) => rack with
    {
        Cabinet = Cabinet ?? rack.Cabinet,
        Height = Height ?? rack.Height,
        Depth = Depth ?? rack.Depth,
        Load = Load ?? rack.Load,
        Blanked = Blanked ?? rack.Blanked,
    };
}

using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at an endpoint.</summary>
/// <param name="Id">The endpoint.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record EndpointChange(string Id, Place At)
{
    /// <summary>The model in its place; null for the same.</summary>
    public string? Model { get; init; }

    /// <summary>What it asks of the network then; null for the same.</summary>
    public Catalogues.TrafficFigures? Traffic { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public EndpointChange Over(EndpointChange other) => this with { Model = Model ?? other.Model, Traffic = Traffic ?? other.Traffic };

    /// <summary>The endpoint with the change.</summary>
    /// <param name="endpoint">The endpoint as surveyed.</param>
    /// <returns>The endpoint as it is then.</returns>
    /// <remarks>Draws and a mode that were written for it are those of the old device, and go with it.</remarks>
    public Endpoint In(Endpoint endpoint) => Model is null || Model == endpoint.Model
        ? endpoint with { Traffic = Traffic ?? endpoint.Traffic }
        : endpoint with { Model = Model, Traffic = Traffic ?? endpoint.Traffic, Draws = new Dictionary<string, Given<Watts>>(), Mode = null };
}

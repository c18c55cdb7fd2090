using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at an endpoint.</summary>
/// <param name="Id">The endpoint.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record EndpointChange(string Id, Place At)
{
    /// <summary>What it asks of the network then; null for the same.</summary>
    public Catalogues.TrafficFigures? Traffic { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public EndpointChange Over(EndpointChange other) => this with { Traffic = Traffic ?? other.Traffic };

    /// <summary>The endpoint with the change.</summary>
    /// <param name="endpoint">The endpoint as surveyed.</param>
    /// <returns>The endpoint as it is then.</returns>
    public Endpoint In(Endpoint endpoint) => endpoint with { Traffic = Traffic ?? endpoint.Traffic };
}

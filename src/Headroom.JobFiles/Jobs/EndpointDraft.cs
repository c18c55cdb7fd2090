using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Jobs;

/// <summary>What is written about endpoints that share a key.</summary>
internal sealed record EndpointDraft(
    string? Model,
    IReadOnlyList<string> Drops,
    string? Near,
    string? Mode,
    IReadOnlyDictionary<string, Given<Watts>> Draws,
    string? Hardware)
{
    /// <summary>What it asks of the network; null where its model says it.</summary>
    public TrafficFigures? Traffic { get; init; }

    /// <summary>That it keeps pictures; null when it does not.</summary>
    public Recorder? Recorder { get; init; }

    /// <summary>Nothing but perhaps a model.</summary>
    public static EndpointDraft Of(string? model) => new(model, [], null, null, new Dictionary<string, Given<Watts>>(), null);
}

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
    /// <summary>Nothing but perhaps a model.</summary>
    public static EndpointDraft Of(string? model) => new(model, [], null, null, new Dictionary<string, Given<Watts>>(), null);
}

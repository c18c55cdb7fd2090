namespace Headroom.JobFiles.Jobs;

/// <summary>The key of endpoints: their names, or a count and a model.</summary>
/// <param name="Names">The names; empty when they are counted.</param>
/// <param name="Count">How many are counted; 0 when they are named.</param>
/// <param name="Model">The model of counted ones; null when they are named.</param>
/// <param name="Written">The key as written.</param>
internal sealed record EndpointKey(IReadOnlyList<string> Names, int Count, string? Model, string Written);

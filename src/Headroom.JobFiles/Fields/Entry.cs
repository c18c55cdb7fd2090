using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Fields;

/// <summary>A thing of a map with its key.</summary>
internal sealed record Entry<TKey, T>(TKey Key, T Value, Place At);

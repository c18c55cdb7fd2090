namespace Headroom.JobFiles.Fields;

/// <summary>What a design says of a thing that it may have taken over.</summary>
/// <param name="Thing">The thing; null when it is taken away.</param>
internal sealed record OrNone<T>(T? Thing)
    where T : class
{
    /// <summary>The name of what is taken away; null otherwise, and before the name is known.</summary>
    public string? Removed { get; init; }
}

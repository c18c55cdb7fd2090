namespace Headroom.Tests;

/// <summary>A process to run to its end.</summary>
internal sealed record ProcessStart(string File, params string[] Arguments)
{
    /// <summary>Folder to run in; the root of the source tree unless said otherwise.</summary>
    public string Folder { get; init; } = Repository.Root;

    /// <summary>Variables set on top of the inherited ones; null removes one.</summary>
    public IReadOnlyDictionary<string, string?> Environment { get; init; } = new Dictionary<string, string?>();

    /// <summary>Given as standard input, which then ends; empty unless said otherwise.</summary>
    public string Input { get; init; } = "";

    /// <summary>After this the process and its children are killed and the test fails.</summary>
    public TimeSpan Timeout { get; init; } = TimeSpan.FromMinutes(2);
}

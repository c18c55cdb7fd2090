using System.Text.Json;

namespace Headroom.Cli.Tests.Commands;

/// <summary>The jobs that are shipped as examples, each with the designs it has.</summary>
internal static class Examples
{
    /// <summary>Paths from the root of the tree.</summary>
    public static IReadOnlyList<string> Jobs { get; } =
        [.. Directory.GetFiles(Repository.PathOf("examples"), "job.yaml", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    /// <summary>A study of an example within the test; it must come to a ledger.</summary>
    public static string Study(string job, params string[] options)
    {
        var result = TestDesk.Run(["study", Repository.PathOf(job), "--on", "2026-11-25", .. options]);
        Assert.True(result.ExitCode < 2, result.Err);
        return result.Out;
    }

    /// <summary>The ids of all entries and figures of an example.</summary>
    public static IReadOnlyList<string> Ids(string job)
    {
        using var ledger = JsonDocument.Parse(Study(job, "--format", "json"));
        return [.. new[] { "entries", "figures" }.SelectMany(list => ledger.RootElement.GetProperty(list).EnumerateArray().Select(item => item.GetProperty("id").GetString()!))];
    }
}

namespace Headroom.Cli.Many;

/// <summary>Finds the job files below a folder.</summary>
internal static class JobFolder
{
    private const int LookAt = 40;

    /// <summary>Whether a folder is one job rather than a place where jobs lie.</summary>
    public static bool IsOfMany(string name) => Directory.Exists(name) && !File.Exists(Path.Combine(name, "job.yaml"));

    /// <summary>The job files below a folder, in the order of their names: every YAML file but those that say they are catalogues or rates.</summary>
    /// <param name="folder">The folder.</param>
    public static IReadOnlyList<string> Files(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*.yaml", new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System })
            .Where(file => Path.GetFileName(file) == "job.yaml" || !IsCatalogue(file))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>What a person would call a job: its file from the folder on, and for a folder of its own that folder.</summary>
    public static string NameOf(string folder, string file)
    {
        var path = Path.GetRelativePath(folder, file).Replace('\\', '/');
        return path.EndsWith("/job.yaml", StringComparison.Ordinal) ? path[..^"/job.yaml".Length] : path;
    }

    // The first key of either file says what it is. One that cannot be read is taken for a job, so that it is spoken of.
    private static bool IsCatalogue(string file)
    {
        try
        {
            return File.ReadLines(file).Take(LookAt).Any(line => line.StartsWith("catalogue:", StringComparison.Ordinal) || line.StartsWith("rates:", StringComparison.Ordinal));
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}

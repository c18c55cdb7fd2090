using System.IO.Enumeration;

namespace Headroom.Cli.Many;

/// <summary>Finds the job files below a folder.</summary>
internal static class JobFolder
{
    /// <summary>The most YAML files that are looked at; a firm has a few hundred sites, and whoever names the root of a disk does not mean it.</summary>
    public const int Most = 10_000;

    private const int LookAt = 4096;

    private static readonly EnumerationOptions Below = new() { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System };

    /// <summary>Whether a folder is one job rather than a place where jobs lie.</summary>
    public static bool IsOfMany(string name) => Directory.Exists(name) && !File.Exists(Path.Combine(name, "job.yaml"));

    /// <summary>The job files below a folder, in the order of their names: every YAML file but those that say they are catalogues, rates or a firm.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The files; null when there are more than <see cref="Most"/>.</returns>
    /// <remarks>A folder that is only a link is not gone into: it may lead back up, and its jobs would be worked out again and again.</remarks>
    public static IReadOnlyList<string>? Files(string folder)
    {
        var found = new FileSystemEnumerable<string>(folder, (ref FileSystemEntry entry) => entry.ToSpecifiedFullPath(), Below)
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.IsDirectory && entry.FileName.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase),
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !entry.Attributes.HasFlag(FileAttributes.ReparsePoint),
        };
        var all = found.Take(Most + 1).ToList();
        return all.Count > Most ? null : [.. all.Where(file => Path.GetFileName(file) == "job.yaml" || !IsCatalogue(file)).Order(StringComparer.Ordinal)];
    }

    /// <summary>What a person would call a job: its file from the folder on, and for a folder of its own that folder.</summary>
    public static string NameOf(string folder, string file)
    {
        var path = Path.GetRelativePath(folder, file).Replace('\\', '/');
        return path.EndsWith("/job.yaml", StringComparison.Ordinal) ? path[..^"/job.yaml".Length] : path;
    }

    /// <summary>True for an empty file, and for a pipe or a device, which would keep whoever opens it waiting.</summary>
    public static bool HoldsNothing(string file)
    {
        try
        {
            return new FileInfo(File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName ?? file).Length == 0;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    // The first key of either file says what it is. One that cannot be read is taken for a job, so that it is spoken of.
    private static bool IsCatalogue(string file)
    {
        if (HoldsNothing(file))
            return false;
        try
        {
            var start = new char[LookAt];
            using var text = new StreamReader(file);
            var read = text.ReadBlock(start);
            var begin = $"\n{start.AsSpan(0, read)}";
            return begin.Contains("\ncatalogue:", StringComparison.Ordinal) || begin.Contains("\nrates:", StringComparison.Ordinal) || begin.Contains("\nfirm:", StringComparison.Ordinal);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}

using Headroom.Documents.Papers;

namespace Headroom.Cli.Commands;

/// <summary>Puts papers into a folder: written aside first, then moved, so that no half of a pack is ever seen.</summary>
internal static class PaperFolder
{
    /// <summary>Writes them; says what stands in the way, or null when all are there.</summary>
    /// <param name="folder">The folder; made when it is not there.</param>
    /// <param name="papers">The papers.</param>
    public static string? Complaint(string folder, IReadOnlyList<WrittenPaper> papers)
    {
        if (File.Exists(folder))
            return $"{folder} is a file; name a folder for --out";
        if (Above(folder) is { } file)
            return $"{file} is a file, so nothing can lie in {folder}; name a folder for --out";
        if (papers.FirstOrDefault(paper => Directory.Exists(Path.Combine(folder, paper.Name))) is { } taken)
            return $"nothing was written to {folder}: {Path.Combine(folder, taken.Name)} is a folder; name another place, or move it away";
        var isNew = !Directory.Exists(folder);
        var aside = Path.Combine(folder, $".new-{Environment.ProcessId}");
        try
        {
            Directory.CreateDirectory(aside);
            foreach (var paper in papers)
                File.WriteAllBytes(Path.Combine(aside, paper.Name), paper.Bytes.Span);
            foreach (var paper in papers)
                File.Move(Path.Combine(aside, paper.Name), Path.Combine(folder, paper.Name), overwrite: true);
            Directory.Delete(aside);
            return null;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Remove(aside);
            if (isNew)
                RemoveEmpty(folder);
            return $"nothing was written to {folder}: {Refusal.Of(reason)}";
        }
    }

    // The file that stands where a folder on the way should be; null for none.
    private static string? Above(string folder)
    {
        for (var at = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(folder)); !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
        {
            if (File.Exists(at))
                return at;
        }

        return null;
    }

    // A folder that was made for papers of which none came to be; one that holds something stays.
    private static void RemoveEmpty(string folder)
    {
        try
        {
            if (Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
                Directory.Delete(folder);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            // It is empty, and whoever may not delete it can do no harm with it.
        }
    }

    private static void Remove(string aside)
    {
        try
        {
            if (Directory.Exists(aside))
                Directory.Delete(aside, recursive: true);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            // What could not be written cannot be taken away either; its name says that it is not meant to stay.
        }
    }
}

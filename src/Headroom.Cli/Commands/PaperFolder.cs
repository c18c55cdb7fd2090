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
            return $"nothing was written to {folder}: {Refusal.Of(reason)}";
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

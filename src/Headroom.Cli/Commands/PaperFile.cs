namespace Headroom.Cli.Commands;

/// <summary>Writes one file: aside first, then moved, so that no half of it is ever seen.</summary>
internal static class PaperFile
{
    /// <summary>Writes it; says what stands in the way, or null when it is there.</summary>
    /// <param name="file">The file.</param>
    /// <param name="bytes">What is in it.</param>
    public static string? Complaint(string file, ReadOnlyMemory<byte> bytes)
    {
        if (Directory.Exists(file))
            return $"{file} is a folder; name a file for --out";
        var aside = $"{file}.new-{Environment.ProcessId}";
        try
        {
            File.WriteAllBytes(aside, bytes.Span);
            File.Move(aside, file, overwrite: true);
            return null;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Remove(aside);
            return $"{file} cannot be written: {Refusal.Of(reason)}";
        }
    }

    private static void Remove(string aside)
    {
        try
        {
            File.Delete(aside);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            // What could not be written cannot be taken away either; its name says that it is not meant to stay.
        }
    }
}

using System.Text;

namespace Headroom.Cli.Commands;

/// <summary>Writes a file that must not be there yet.</summary>
internal static class NewFile
{
    /// <summary>Writes it; says what stands in the way, or null when it is written.</summary>
    public static string? Complaint(string name, string text)
    {
        if (Directory.Exists(name))
            return $"{name} is a folder; name the file in it: {Path.Combine(name, "job.yaml")}";
        if (File.Exists(name))
            return $"{name} is there already and is left as it is; name another file";
        if (Path.GetDirectoryName(name) is { Length: > 0 } folder && !Directory.Exists(folder))
            return $"there is no folder {folder}; make it first";
        try
        {
            // CreateNew: whoever made the file since it was asked for keeps it.
            using var stream = new FileStream(name, FileMode.CreateNew, FileAccess.Write);
            stream.Write(Encoding.UTF8.GetBytes(text));
            return null;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return $"{name} cannot be written; see whether you may write there, and whether the name is a possible one";
        }
    }
}

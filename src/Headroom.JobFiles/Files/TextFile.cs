using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Files;

/// <summary>Reads a text file somebody named, whatever it turns out to be: in bounded time and memory, and never by throwing.</summary>
public static class TextFile
{
    /// <summary>The most bytes that are read. The largest job we could think of, 2 000 endpoints written one by one, has a tenth.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <returns>The text without a byte order mark, or null with the finding that says why not.</returns>
    public static Loaded<string> Read(string path) => ReadAs(path, bytes => Utf8Text.Decode(bytes.Span, path));

    /// <summary>Reads a stream, such as standard input, with the same guards.</summary>
    /// <param name="stream">The stream, which stays open.</param>
    /// <param name="path">The name that findings give it.</param>
    /// <returns>The text without a byte order mark, or null with the finding that says why not.</returns>
    public static Loaded<string> Read(Stream stream, string path) => ReadAs(stream, path, bytes => Utf8Text.Decode(bytes.Span, path));

    /// <summary>Reads a file whose bytes are decoded in another way, with the same guards.</summary>
    internal static Loaded<T> ReadAs<T>(string path, Func<ReadOnlyMemory<byte>, Loaded<T>> decode)
        where T : class
    {
        if (Directory.Exists(path))
            return new(null, Refuse(path, FileCodes.Folder, "a folder", "a file", "name the file in it"));
        if (!File.Exists(path))
            return new(null, Missing(path));
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return ReadAs(stream, path, decode);
        }
        catch (UnauthorizedAccessException)
        {
            return new(null, Refuse(path, FileCodes.Unreadable, "a file that may not be read", "a file that you may read", "change who may read it, or copy it"));
        }
        catch (IOException reason)
        {
            return new(null, Refuse(path, FileCodes.Unreadable, $"a file that cannot be read ({reason.Message.TrimEnd('.')})", "a file that can be read", "see whether another program holds it, then try again"));
        }
    }

    private static Loaded<T> ReadAs<T>(Stream stream, string path, Func<ReadOnlyMemory<byte>, Loaded<T>> decode)
        where T : class
    {
        // The length is asked before anything is read; a device or pipe answers 0 or cannot be asked, and is stopped by the size of the buffer.
        var length = stream.CanSeek ? stream.Length : 0;
        if (length > MostBytes)
            return new(null, TooLarge(path, length));
        var bytes = new byte[(length > 0 ? length : MostBytes) + 1];
        var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return count > MostBytes ? new(null, TooLarge(path, count)) : decode(bytes.AsMemory(0, count));
    }

    private static Finding[] Missing(string path)
    {
        var near = NearName(path);
        return Refuse(path, FileCodes.Missing, "no such file", "a file that is there", near is null ? "check the name and the folder" : $"did you mean '{near}'?");
    }

    private static string? NearName(string path)
    {
        var folder = Path.GetDirectoryName(path);
        folder = string.IsNullOrEmpty(folder) ? "." : folder;
        if (path.Contains('\0') || !Directory.Exists(folder))
            return null;
        try
        {
            return Spelling.Nearest(Path.GetFileName(path), Directory.EnumerateFiles(folder).Take(1000).Select(file => Path.GetFileName(file)));
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static Finding[] TooLarge(string path, long bytes) => Refuse(
        path,
        FileCodes.TooLarge,
        $"a file of {bytes / (1024.0 * 1024):0.#} MiB or more",
        $"at most {MostBytes / (1024 * 1024)} MiB",
        "see whether it is the right file");

    private static Finding[] Refuse(string path, FindingCode code, string given, string allowed, string advice) =>
        [new Finding(Severity.Error, code.Code, new Place(path, 0, 0), given, allowed, advice)];
}

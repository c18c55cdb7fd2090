using System.Text;

namespace Headroom.JobFiles.Editing;

/// <summary>Writes files so that at every moment, also when the power fails, either the old or the new one is there whole.</summary>
public static class SafeFile
{
    // Without a byte order mark of its own; a text that is no Unicode is refused and not mended in silence.
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Puts a text in the place of a file's. It is written beside the file first, then renamed; who may read it, and a byte order mark, stay as they were.</summary>
    /// <param name="path">The file; of a link the file it leads to is replaced.</param>
    /// <param name="text">The whole new text.</param>
    /// <exception cref="FileNotFoundException">There is no such file.</exception>
    /// <exception cref="IOException">It cannot be written; the file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; the file is as it was.</exception>
    /// <exception cref="EncoderFallbackException">The text is no Unicode; the file is as it was.</exception>
    public static void Replace(string path, string text)
    {
        var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);
        if (!File.Exists(target))
            throw new FileNotFoundException($"There is no file '{path}' to replace.", path);
        UnixFileMode? mode = OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(target);
        var whole = HasMark(target) && !text.StartsWith('\uFEFF') ? '\uFEFF' + text : text;
        Write(target, whole, mode, overwrite: true);
    }

    /// <summary>Writes a new file.</summary>
    /// <param name="path">The file, which must not be there.</param>
    /// <param name="text">Its text.</param>
    /// <exception cref="IOException">It is there already, or cannot be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    /// <exception cref="EncoderFallbackException">The text is no Unicode; nothing was changed.</exception>
    public static void Create(string path, string text)
    {
        if (Path.Exists(path))
            throw new IOException($"'{path}' is there already.");
        Write(Path.GetFullPath(path), text, mode: null, overwrite: false);
    }

    private static void Write(string target, string text, UnixFileMode? mode, bool overwrite)
    {
        var aside = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Path.GetRandomFileName()}");
        try
        {
            WriteAside(aside, text);
            if (mode is { } bits && !OperatingSystem.IsWindows())
                File.SetUnixFileMode(aside, bits);
            File.Move(aside, target, overwrite);
        }
        finally
        {
            // After the renaming there is none; after a failure it must not stay.
            File.Delete(aside);
        }
    }

    private static void WriteAside(string aside, string text)
    {
        using var stream = new FileStream(aside, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        using (var writer = new StreamWriter(stream, Strict, leaveOpen: true))
            writer.Write(text);
        stream.Flush(flushToDisk: true);
    }

    private static bool HasMark(string path)
    {
        using var stream = File.OpenRead(path);
        Span<byte> first = stackalloc byte[3];
        return stream.ReadAtLeast(first, 3, throwOnEndOfStream: false) == 3 && first.SequenceEqual("\uFEFF"u8);
    }
}

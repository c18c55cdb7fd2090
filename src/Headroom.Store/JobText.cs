using System.Text;

namespace Headroom.Store;

/// <summary>A job as it came: the bytes of its file, with those of the sheets that lie beside it.</summary>
/// <param name="Bytes">The job file, byte for byte.</param>
/// <param name="Files">The files beside it by their names, with <c>/</c> between folders; empty when there are none.</param>
public sealed record JobText(ReadOnlyMemory<byte> Bytes, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> Files)
{
    /// <summary>No files.</summary>
    public static IReadOnlyDictionary<string, ReadOnlyMemory<byte>> NoFiles { get; } = new Dictionary<string, ReadOnlyMemory<byte>>();

    private static ReadOnlySpan<byte> Mark => "\uFEFF"u8;

    /// <summary>The job file as text, without a byte order mark.</summary>
    public string Text => Encoding.UTF8.GetString(HasMark ? Bytes.Span[Mark.Length..] : Bytes.Span);

    private bool HasMark => Bytes.Span.StartsWith(Mark);

    /// <summary>A job of a text.</summary>
    /// <param name="text">The text of the job file.</param>
    public static JobText Of(string text) => new(Encoding.UTF8.GetBytes(text), NoFiles);

    /// <summary>The same job with another text; a byte order mark stays.</summary>
    /// <param name="text">The whole new text.</param>
    public JobText With(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        return this with { Bytes = HasMark ? (byte[])[.. Mark, .. bytes] : bytes };
    }

    /// <summary>Says whether another holds the same bytes under the same names.</summary>
    /// <param name="other">The other.</param>
    public bool SameAs(JobText other) => Bytes.Span.SequenceEqual(other.Bytes.Span)
        && Files.Count == other.Files.Count
        && Files.All(file => other.Files.TryGetValue(file.Key, out var bytes) && bytes.Span.SequenceEqual(file.Value.Span));
}

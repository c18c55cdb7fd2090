using System.Buffers.Binary;

namespace Headroom.JobFiles.Firms;

/// <summary>How many points a PNG has.</summary>
/// <remarks>Source: PNG specification (W3C, third edition), 5.2 signature and 11.2.1 image header.</remarks>
internal static class PngSize
{
    /// <summary>The most points of a side; more only makes papers slow.</summary>
    public const int Most = 4000;

    private static ReadOnlySpan<byte> Signature => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>Width and height; null when it is no PNG.</summary>
    public static (int Width, int Height)? Of(ReadOnlySpan<byte> bytes) =>
        bytes.Length > 33 && bytes.StartsWith(Signature) && bytes[12..16].SequenceEqual("IHDR"u8) && bytes.IndexOf("IEND"u8) > 0
            ? (BinaryPrimitives.ReadInt32BigEndian(bytes[16..]), BinaryPrimitives.ReadInt32BigEndian(bytes[20..]))
            : null;
}

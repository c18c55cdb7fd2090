using System.Buffers;
using System.Text;
using System.Text.Unicode;
using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Files;

/// <summary>Turns the bytes of a file into text, and says what they are when they are not UTF-8.</summary>
internal static class Utf8Text
{
    /// <summary>Decodes the bytes.</summary>
    public static Loaded<string> Decode(ReadOnlySpan<byte> bytes, string file)
    {
        if (OtherEncoding(bytes) is { } encoding)
            return Refuse(FileCodes.OtherEncoding, new Place(file, 0, 0), ($"text in {encoding}", "text in UTF-8", "save it again with the encoding UTF-8"));
        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];
        var nul = bytes.IndexOf((byte)0);
        if (nul >= 0)
            return Refuse(FileCodes.Binary, PlaceOf(bytes[..nul], file), ("a file that is not text (it holds a zero byte)", "a text file", "see whether it is the right file"));
        return Utf8.IsValid(bytes) ? new(Encoding.UTF8.GetString(bytes), []) : BadByte(bytes, file);
    }

    // Byte order marks first; without one, ASCII text in a wider encoding has a zero beside its first letter.
    private static string? OtherEncoding(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..] => "UTF-32",
        [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => "UTF-16",
        [not 0, 0, 0, 0, ..] or [0, 0, 0, not 0, ..] => "UTF-32",
        [not 0, 0, not 0, 0, ..] or [0, not 0, 0, not 0, ..] => "UTF-16",
        _ => null,
    };

    private static Loaded<string> BadByte(ReadOnlySpan<byte> bytes, string file)
    {
        var good = 0;
        while (Rune.DecodeFromUtf8(bytes[good..], out _, out var length) == OperationStatus.Done)
            good += length;
        var value = bytes[good];
        var guess = value >= 0xA0 ? $", perhaps '{(char)value}' in an older encoding" : "";
        return Refuse(
            FileCodes.BadUtf8,
            PlaceOf(bytes[..good], file),
            ($"the byte 0x{value:X2}{guess}", "text in UTF-8", "save the file again with the encoding UTF-8"));
    }

    private static Place PlaceOf(ReadOnlySpan<byte> before, string file)
    {
        var line = before.Count((byte)'\n') + 1;
        var start = before.LastIndexOf((byte)'\n') + 1;
        return new Place(file, line, Encoding.UTF8.GetCharCount(before[start..]) + 1);
    }

    private static Loaded<string> Refuse(FindingCode code, Place at, (string Given, string Allowed, string Advice) words) =>
        new(null, [new Finding(Severity.Error, code.Code, at, words.Given, words.Allowed, words.Advice)]);
}

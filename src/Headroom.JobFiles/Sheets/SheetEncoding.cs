using System.Text;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;

namespace Headroom.JobFiles.Sheets;

/// <summary>Turns the bytes of a sheet into text: UTF-8, UTF-16, or the encoding of older Windows programs in Western Europe.</summary>
internal static class SheetEncoding
{
    public const string Utf8 = "utf-8";
    public const string Utf16 = "utf-16";
    public const string Windows = "windows-1252";

    // Windows code page 1252 from 0x80 to 0x9F; the five that are unused stay control characters, as WHATWG has them (from memory).
    private const string Upper = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ";

    /// <summary>The words for the encodings.</summary>
    public static IReadOnlyList<string> Words { get; } = [Utf8, Utf16, Windows];

    /// <summary>Decodes the bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="file">The name that findings give the file.</param>
    /// <param name="stated">The encoding that the person named; null to see for oneself.</param>
    public static Loaded<SheetText> Decode(ReadOnlySpan<byte> bytes, string file, string? stated)
    {
        if (bytes is [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..])
            return Refuse(FileCodes.OtherEncoding, file, "text in UTF-32", "text in UTF-8 or UTF-16");
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return Wide(bytes[2..], file, (bytes[0] == 0xFE, true));
        if (stated == Utf16)
            return Wide(bytes, file, (bytes is [0, ..], false));
        var isMarked = bytes.StartsWith("\uFEFF"u8);
        var body = isMarked ? bytes[3..] : bytes;
        if (body.Contains((byte)0))
            return Refuse(FileCodes.Binary, file, "a file that is not text (it holds a zero byte)", "a sheet as text, with cells between separators");
        if (stated != Windows && System.Text.Unicode.Utf8.IsValid(body))
            return new(new SheetText(Encoding.UTF8.GetString(body), Utf8, isMarked, null), []);
        return isMarked || stated == Utf8
            ? new(null, Utf8Text.Decode(bytes, file).Findings)
            : Narrow(body);
    }

    private static Loaded<SheetText> Wide(ReadOnlySpan<byte> bytes, string file, (bool BigEndian, bool HasMark) how)
    {
        if (bytes.Length % 2 != 0)
            return Refuse(FileCodes.OtherEncoding, file, "text in UTF-16 with half a character at its end", "whole characters");
        var text = (how.BigEndian ? Encoding.BigEndianUnicode : Encoding.Unicode).GetString(bytes);
        return text.Contains('\0')
            ? Refuse(FileCodes.Binary, file, "a file that is not text (it holds a zero character)", "a sheet as text, with cells between separators")
            : new(new SheetText(text, Utf16, how.HasMark, null), []);
    }

    private static Loaded<SheetText> Narrow(ReadOnlySpan<byte> bytes)
    {
        var characters = new char[bytes.Length];
        int? odd = null;
        for (var i = 0; i < bytes.Length; i++)
        {
            characters[i] = bytes[i] is >= 0x80 and < 0xA0 ? Upper[bytes[i] - 0x80] : (char)bytes[i];
            if (bytes[i] >= 0x80)
                odd ??= i;
        }

        return new(new SheetText(new string(characters), Windows, false, odd), []);
    }

    private static Loaded<SheetText> Refuse(FindingCode code, string file, string given, string allowed) =>
        new(null, [new Finding(Severity.Error, code.Code, new Place(file, 0, 0), given, allowed, "save the sheet again as CSV in UTF-8")]);
}

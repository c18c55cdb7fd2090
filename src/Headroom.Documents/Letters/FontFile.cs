using System.Buffers.Binary;

namespace Headroom.Documents.Letters;

/// <summary>What layout needs of a font file: which characters it has, and how wide each is.</summary>
/// <remarks>Source: OpenType specification 1.9, tables head, hhea, hmtx and cmap (format 4).</remarks>
internal sealed class FontFile
{
    private const int TableRecord = 16;

    private readonly byte[] _bytes;
    private readonly int _unitsPerEm;
    private readonly int _advances;
    private readonly int _hmtx;
    private readonly int _map;
    private readonly int _segments;

    /// <summary>Opens a TrueType font.</summary>
    /// <param name="bytes">The file.</param>
    public FontFile(byte[] bytes)
    {
        _bytes = bytes;
        _unitsPerEm = U16(Table("head") + 18);
        _advances = U16(Table("hhea") + 34);
        _hmtx = Table("hmtx");
        _map = UnicodeMap(Table("cmap"));
        _segments = U16(_map + 6) / 2;
    }

    /// <summary>The file.</summary>
    public byte[] Bytes => _bytes;

    /// <summary>The width of a character, as a share of the size; null when the font does not have it.</summary>
    public double? Advance(char character) =>
        Glyph(character) is > 0 and var glyph ? (double)U16(_hmtx + 4 * Math.Min(glyph, _advances - 1)) / _unitsPerEm : null;

    // The segments lie one behind the other, sorted by their last character.
    private int Glyph(char character)
    {
        var ends = _map + 14;
        var starts = ends + 2 * _segments + 2;
        for (var i = 0; i < _segments; i++)
        {
            if (U16(ends + 2 * i) < character)
                continue;
            var start = U16(starts + 2 * i);
            if (start > character)
                return 0;
            var delta = U16(starts + 2 * (_segments + i));
            var at = starts + 2 * (2 * _segments + i);
            var range = U16(at);
            if (range == 0)
                return character + delta & 0xFFFF;
            var glyph = U16(at + range + 2 * (character - start));
            return glyph == 0 ? 0 : glyph + delta & 0xFFFF;
        }

        return 0;
    }

    private int Table(string tag)
    {
        var count = U16(4);
        for (var at = 12; at < 12 + TableRecord * count; at += TableRecord)
        {
            if (System.Text.Encoding.ASCII.GetString(_bytes, at, 4) == tag)
                return (int)U32(at + 8);
        }

        throw new InvalidDataException($"The font has no table '{tag}'.");
    }

    private int UnicodeMap(int cmap)
    {
        var count = U16(cmap + 2);
        for (var i = 0; i < count; i++)
        {
            var map = cmap + (int)U32(cmap + 4 + 8 * i + 4);
            if (U16(map) == 4)
                return map;
        }

        throw new InvalidDataException("The font has no map of the characters of the basic plane.");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_bytes.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_bytes.AsSpan(at));
}

using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Headroom.Documents.Pdf;

/// <summary>Takes out of a PDF what its library draws by chance, so that the same papers are the same bytes.</summary>
internal static partial class SameBytes
{
    /// <summary>The file with names of its own for font subsets and identifiers; every replacement is as long as what it replaces, so that no offset moves.</summary>
    public static byte[] Of(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var tags = new Dictionary<string, string>();
        text = FontTag().Replace(text, found =>
        {
            if (!tags.TryGetValue(found.Groups[2].Value, out var tag))
                tags[found.Groups[2].Value] = tag = "AAAA" + (char)('A' + tags.Count / 26) + (char)('A' + tags.Count % 26);
            return found.Groups[1].Value + tag + "+";
        });
        text = Uuid().Replace(text, "uuid:00000000-0000-0000-0000-000000000000");
        text = Dates().Replace(text, found => found.Groups[1].Value + found.Groups[2].Value);
        text = Id().Replace(text, found => $"/ID{found.Groups[1].Value}<{new string('0', 32)}>{found.Groups[2].Value}<{new string('0', 32)}>");
        var hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)))[..32];
        text = Id().Replace(text, found => $"/ID{found.Groups[1].Value}<{hash}>{found.Groups[2].Value}<{hash}>");
        return Encoding.Latin1.GetBytes(text);
    }

    [GeneratedRegex("(/(?:FontName|BaseFont)\\s*/)([A-Z]{6})\\+")]
    private static partial Regex FontTag();

    [GeneratedRegex("uuid:[0-9a-fA-F-]{36}")]
    private static partial Regex Uuid();

    [GeneratedRegex("(<xmp:MetadataDate>)([^<]*)")]
    private static partial Regex Dates();

    [GeneratedRegex("/ID(\\s*\\[\\s*)<[0-9A-Fa-f]{32}>(\\s*)<[0-9A-Fa-f]{32}>")]
    private static partial Regex Id();
}

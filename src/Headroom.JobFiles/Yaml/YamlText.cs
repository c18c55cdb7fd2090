using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;

namespace Headroom.JobFiles.Yaml;

/// <summary>Reads the part of YAML 1.2 that job and catalogue files need: one document of maps, lists and texts, without anchors and tags.</summary>
public static class YamlText
{
    /// <summary>How deep things may lie in things.</summary>
    public const int MostDepth = 32;

    /// <summary>How many keys, values, lists and maps there may be.</summary>
    public const int MostNodes = 2_000_000;

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <returns>The tree, or null with the findings that say why not.</returns>
    public static Loaded<YamlNode> ReadFile(string path)
    {
        var text = TextFile.Read(path);
        return text.Value is null ? new(null, text.Findings) : Parse(text.Value, path);
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text; a byte order mark at its beginning is passed over.</param>
    /// <param name="file">The name that findings give it.</param>
    /// <returns>The tree as far as it could be read, with all findings; null when there is no whole tree.</returns>
    public static Loaded<YamlNode> Parse(string text, string file) => Parse(text, new Place(file, 1, 1));

    /// <summary>Reads a piece of a text.</summary>
    /// <param name="text">The piece; whole lines, or a part of one line.</param>
    /// <param name="first">Where its first character stands.</param>
    /// <returns>The tree as far as it could be read, with all findings.</returns>
    internal static Loaded<YamlNode> Parse(string text, Place first)
    {
        var skipped = text.StartsWith('\uFEFF') ? 1 : 0;
        var body = skipped == 0 ? text : text[skipped..];
        if (string.IsNullOrWhiteSpace(body))
            return new(null, [Empty(first.File)]);
        var findings = TextGuard.Check(body, first);
        // The parser takes a tab for the depth of another line, and a zero character for the end.
        if (body.Contains('\0') || findings.Any(finding => finding.Code == FileCodes.Tab.Code))
            return new(null, InOrder(findings));
        var reader = new YamlReader(body, first, skipped, findings);
        var root = reader.ReadDocument();
        if (root is null && findings.Count == 0)
            findings.Add(Empty(first.File));
        return new(root, InOrder(findings));
    }

    /// <summary>Findings in order of place, file by file.</summary>
    internal static List<Finding> InOrder(IEnumerable<Finding> findings) =>
        [.. findings.OrderBy(finding => finding.At.File, StringComparer.Ordinal).ThenBy(finding => finding.At.Line).ThenBy(finding => finding.At.Column)];

    private static Finding Empty(string file) => new(
        Severity.Error, FileCodes.Empty.Code, new Place(file, 0, 0), "an empty file", "keys with their values", "see whether it is the right file");
}

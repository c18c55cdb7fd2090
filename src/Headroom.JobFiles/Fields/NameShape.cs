using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>The name of a thing, as people say it and write it on labels.</summary>
/// <param name="of">What it names, with article: <c>a space</c>.</param>
internal sealed partial class NameShape(string of) : ScalarShape<string>
{
    /// <summary>The longest name; a label has no room for more.</summary>
    public const int Most = 64;

    /// <summary>Names in a regular expression: letters and digits, with hyphens, points, underscores and single spaces between them.</summary>
    public const string Pattern = @"[\p{L}\p{N}]+([ ._-][\p{L}\p{N}]+)*";

    /// <inheritdoc/>
    public override string InWords => $"the name of {of}";

    /// <summary>Says whether a text can be a name.</summary>
    public static bool IsName(string text) => text.Length <= Most && text is not ("none" or "unknown") && Whole().IsMatch(text);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($"^{Pattern}$", "string", "integer");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out string value)
    {
        value = scalar.Text;
        return IsName(value)
            || Refuse(Slips.NotAName, scalar, reader, $"use letters and digits, with hyphens, points or single spaces between them, at most {Most} characters");
    }

    [GeneratedRegex($"^{Pattern}$", RegexOptions.CultureInvariant)]
    private static partial Regex Whole();
}

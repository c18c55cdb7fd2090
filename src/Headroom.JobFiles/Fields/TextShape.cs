using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Any text.</summary>
internal sealed class TextShape : ScalarShape<string>
{
    /// <summary>More is cut off on every paper and page.</summary>
    private const int Most = 500;

    /// <inheritdoc/>
    public override string InWords => $"a text of at most {Most} characters";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => new() { ["type"] = SchemaParts.Types("string", "number"), ["minLength"] = 1, ["maxLength"] = Most };

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out string value)
    {
        value = scalar.Text.Trim();
        if (value.Length == 0)
            return Refuse(Slips.NotAValue, scalar, reader, "write the text, or leave the key out when it is not known");
        return value.Length <= Most || Refuse(Slips.TooLong, scalar, reader, "shorten it");
    }
}

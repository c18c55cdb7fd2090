using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A text that is understood only together with another key; it is kept as written with its place.</summary>
/// <param name="what">What it is, in words.</param>
internal sealed class WrittenShape(string what) : ScalarShape<YamlScalar>
{
    /// <inheritdoc/>
    public override string InWords => what;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => new() { ["type"] = "string", ["minLength"] = 1 };

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out YamlScalar value)
    {
        value = scalar;
        return true;
    }
}

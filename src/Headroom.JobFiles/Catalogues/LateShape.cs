using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>A thing that is kept as it stands, because it may have to be completed by another before it is read.</summary>
/// <param name="shape">What it is read with later.</param>
internal sealed class LateShape(Shape shape) : Shape<YamlNode>
{
    /// <inheritdoc/>
    public override string InWords => shape.InWords;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [shape];

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => shape.Schema(parts);

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out YamlNode value)
    {
        value = node;
        return true;
    }
}

using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A shape that is made when it is first needed: most files have nothing of it.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="make">Tells the shape.</param>
internal sealed class LaterShape<T>(Func<Shape<T>> make) : Shape<T>
{
    /// <inheritdoc/>
    public override string InWords => make().InWords;

    /// <inheritdoc/>
    public override bool NamesItself => make().NamesItself;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [make()];

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => make().Schema(parts);

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => make().Complete(under, over);

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value) => make().Read(node, reader, out value);
}

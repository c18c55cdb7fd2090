using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A shape that is made when a file first has it: what few jobs say must not make all of them slower to read.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
/// <param name="make">Makes the shape.</param>
internal sealed class OnDemand<T>(Func<Shape<T>> make) : Shape<T>
{
    private Shape<T>? _made;

    /// <inheritdoc/>
    public override string InWords => Made.InWords;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [Made];

    private Shape<T> Made => _made ??= make();

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => Made.Schema(parts);

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => Made.Complete(under, over);

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value) => Made.Read(node, reader, out value);
}

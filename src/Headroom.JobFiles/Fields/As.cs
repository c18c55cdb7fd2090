using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A shape whose value becomes another, so that a short way of writing means the same as a long one.</summary>
/// <typeparam name="TFrom">What the shape reads.</typeparam>
/// <typeparam name="T">What it becomes.</typeparam>
/// <param name="shape">The shape.</param>
/// <param name="make">Makes one of the other.</param>
internal sealed class As<TFrom, T>(Shape<TFrom> shape, Func<TFrom, YamlNode, T> make) : Shape<T>
{
    /// <inheritdoc/>
    public override string InWords => shape.InWords;

    /// <inheritdoc/>
    public override bool NamesItself => shape.NamesItself;

    /// <inheritdoc/>
    public override bool IsScalar => shape.IsScalar;

    /// <inheritdoc/>
    public override bool TakesNothing => shape.TakesNothing;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [shape];

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => shape.Schema(parts);

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => shape.Complete(under, over);

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        var read = shape.Read(node, reader, out var found);
        value = read ? make(found!, node) : default;
        return read;
    }
}

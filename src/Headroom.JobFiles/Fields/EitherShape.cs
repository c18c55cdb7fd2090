using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>One of several shapes, told apart by a look at the node.</summary>
/// <typeparam name="T">The value, which all of them become.</typeparam>
/// <param name="ways">Each shape with what tells it; the last is taken when nothing else fits.</param>
internal sealed class EitherShape<T>(params (Func<YamlNode, bool> When, Shape<T> Shape)[] ways) : Shape<T>
{
    /// <inheritdoc/>
    public override string InWords => string.Join(", or ", ways.Select(way => way.Shape.InWords));

    /// <inheritdoc/>
    public override bool TakesNothing => ways.Any(way => way.Shape.TakesNothing);

    /// <inheritdoc/>
    public override bool NamesItself => ways.Any(way => way.Shape.NamesItself);

    /// <inheritdoc/>
    public override bool IsScalar => ways.All(way => way.Shape.IsScalar);

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => ways.Select(way => way.Shape);

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value) => For(node).Read(node, reader, out value);

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => For(over).Complete(under, over);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.AnyOf(ways.Select(way => way.Shape.Schema(parts)));

    private Shape<T> For(YamlNode node) => ways.FirstOrDefault(way => way.When(node)).Shape ?? ways[^1].Shape;
}

using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A key with what its value becomes.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="name">The key.</param>
/// <param name="shape">What may stand behind it.</param>
/// <param name="doc">What it is, in one sentence.</param>
/// <param name="example">How a right value looks.</param>
internal sealed class Field<T>(string name, Shape<T> shape, string doc, string example) : Field(name, doc, example)
{
    /// <inheritdoc/>
    public override Shape Shape => shape;

    /// <inheritdoc/>
    public override object? Read(YamlNode node, FieldReader reader)
    {
        if (shape.NamesItself)
            return reader.TryRead(shape, node, out var many) ? many : null;
        using (reader.Into(Name, Example))
            return reader.TryRead(shape, node, out var value) ? value : null;
    }

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => shape.Complete(under, over);
}

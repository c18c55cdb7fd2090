using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A key with what its value becomes.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="name">The key.</param>
/// <param name="make">Makes what may stand behind it, when the key is first met: a file uses few of the keys there are.</param>
/// <param name="doc">What it is, in one sentence.</param>
/// <param name="example">How a right value looks.</param>
internal sealed class Field<T>(string name, Func<Shape<T>> make, string doc, string example) : Field(name, doc, example)
{
    private Shape<T>? _shape;

    /// <summary>Makes it with a shape that is there already.</summary>
    public Field(string name, Shape<T> shape, string doc, string example)
        : this(name, () => shape, doc, example)
    {
        _shape = shape;
    }

    /// <inheritdoc/>
    public override Shape Shape => Behind;

    /// <inheritdoc/>
    public override object? Read(YamlNode node, FieldReader reader)
    {
        if (Behind.NamesItself)
            return reader.TryRead(Behind, node, out var many) ? many : null;
        using (reader.Into(Name, Example))
            return reader.TryRead(Behind, node, out var value) ? value : null;
    }

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => Behind.Complete(under, over);

    private Shape<T> Behind => _shape ??= make();
}

using System.Diagnostics.CodeAnalysis;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A shape that is one text.</summary>
/// <typeparam name="T">The value it becomes.</typeparam>
internal abstract class ScalarShape<T> : Shape<T>
{
    /// <inheritdoc/>
    public override bool IsScalar => true;

    /// <inheritdoc/>
    public sealed override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        if (node is YamlScalar scalar)
            return ReadText(scalar, reader, out value);
        reader.Refuse(Slips.WrongKind, node.At, $"{reader.Name} is {node.What}", InWords, $"write it like '{reader.Example}'");
        value = default;
        return false;
    }

    /// <summary>Reads the text.</summary>
    protected abstract bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out T value);

    /// <summary>Adds the finding that a text is no such value.</summary>
    protected bool Refuse(Slip slip, YamlScalar scalar, FieldReader reader, string? advice = null)
    {
        reader.Refuse(slip, scalar.At, Given(scalar, reader), InWords, advice ?? $"write it like '{reader.Example}'");
        return false;
    }

    /// <summary>What was given, in words.</summary>
    protected static string Given(YamlScalar scalar, FieldReader reader) => $"{reader.Name} is '{Words.Short(scalar.Text)}'";
}

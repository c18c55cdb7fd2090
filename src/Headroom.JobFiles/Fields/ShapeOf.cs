using System.Diagnostics.CodeAnalysis;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A shape that becomes a value.</summary>
/// <typeparam name="T">The value.</typeparam>
internal abstract class Shape<T> : Shape
{
    /// <summary>Reads a node that is neither unknown nor refused.</summary>
    /// <returns>False when it cannot be read; a finding was made then.</returns>
    public abstract bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value);

    /// <summary>What a node becomes that only says what differs from another: the one on top, completed by the other where this shape has keys.</summary>
    public virtual YamlNode Complete(YamlNode under, YamlNode over) => over;
}

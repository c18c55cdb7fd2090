using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A key that a thing may have.</summary>
/// <param name="name">The key, with spaces or hyphens between words as people mostly write it.</param>
/// <param name="doc">What it is, in one sentence for the manual and the schema.</param>
/// <param name="example">How a right value looks, as it would stand in a file.</param>
internal abstract class Field(string name, string doc, string example)
{
    /// <summary>The key.</summary>
    public string Name { get; } = name;

    /// <summary>What it is, in one sentence.</summary>
    public string Doc { get; } = doc;

    /// <summary>How a right value looks.</summary>
    public string Example { get; } = example;

    /// <summary>True when a thing without it is refused.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What may stand behind the key.</summary>
    public abstract Shape Shape { get; }

    /// <summary>Reads the value; null when it is not known or a finding was made.</summary>
    public abstract object? Read(YamlNode node, FieldReader reader);

    /// <summary>What the value becomes where a thing only says what differs from another.</summary>
    public abstract YamlNode Complete(YamlNode under, YamlNode over);
}

namespace Headroom.JobFiles.Yaml;

/// <summary>A key with its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">The value; an empty text where nothing was written.</param>
public sealed record YamlEntry(YamlScalar Key, YamlNode Value);

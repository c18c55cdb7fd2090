using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Reads a firm's models from a table (CSV).</summary>
public static class CatalogueCsv
{
    /// <summary>Reads the table.</summary>
    public static Loaded<YamlNode> Parse(string text, string file) => YamlText.Parse(text, file);
}

using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>A catalogue file as a whole.</summary>
internal static class CatalogueFields
{
    private static readonly Field<int> Format = new("catalogue", new FormatShape(), "The version of the format.", "1") { IsRequired = true };
    private static readonly Field<string> About = new("about", Shapes.Text, "What is in it, in one line.", "What we sell");

    /// <summary>The file: its models as they stand there, by kind.</summary>
    public static ObjectShape<IReadOnlyDictionary<ModelKind, IReadOnlyList<Entry<string, YamlNode>>>> Shape { get; } = new(
        "catalogue file",
        [Format, About, .. ModelKinds.All.Select(kind => kind.Field)],
        values => ModelKinds.All.Where(kind => values.Has(kind.Field)).ToDictionary(kind => kind, kind => values.Must(kind.Field))) { GoesOn = true };
}

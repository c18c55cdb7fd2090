using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <summary>One part of a job as a table: a row for each thing as it is written, a column for each key it may have.</summary>
/// <param name="Path">The keys that lead to it.</param>
/// <param name="Columns">The keys of its rows.</param>
/// <param name="Rows">The rows, in the order written.</param>
public sealed partial record JobTable(IReadOnlyList<string> Path, IReadOnlyList<JobColumn> Columns, IReadOnlyList<JobRow> Rows)
{
    /// <summary>The parts of a survey that can be shown so.</summary>
    public static IReadOnlyList<string> Parts { get; } = ["drops", "endpoints", "spaces", "listeners", "racks", "pathways"];

    /// <summary>The keys of a reading.</summary>
    public static IReadOnlyList<JobColumn> ReadingColumns { get; } = [.. ReadingFields.Shape.Fields.Select(field => new JobColumn(field.Name, field.Doc, field.Example))];

    /// <summary>The items of a list that is written on one line.</summary>
    /// <param name="list">The list.</param>
    public static IReadOnlyList<string> ItemsOf(string list) => YamlText.Parse(list, "").Value is YamlList items ? [.. items.Items.Select(YamlWriter.Flow)] : [];

    /// <summary>The cells of a row that is written on one line.</summary>
    /// <param name="row">The row.</param>
    public static IReadOnlyDictionary<string, string> CellsOf(string row) =>
        YamlText.Parse(row, "").Value is YamlMap keys ? keys.Entries.ToDictionary(entry => entry.Key.Text, entry => Shown(entry.Value)) : new Dictionary<string, string>();

    /// <summary>Reads a part of the survey.</summary>
    /// <param name="text">The text of the job.</param>
    /// <param name="part">One of <see cref="Parts"/>.</param>
    /// <returns>The table; without rows when nothing is written there.</returns>
    public static JobTable Of(string text, string part)
    {
        IReadOnlyList<string> path = ["survey", part];
        var columns = SurveyFields.Shape.Fields.First(field => field.Name == part).Shape.Parts.SelectMany(ObjectsIn).First()
            .Fields.Select(field => new JobColumn(field.Name, field.Doc, field.Example)).ToList();
        YamlNode? at = YamlText.Parse(text, "").Value;
        foreach (var key in path)
            at = (at as YamlMap)?.Find(key)?.Value;
        return new(path, columns, [.. ((at as YamlMap)?.Entries ?? []).Select(entry => Row(entry, columns))]);
    }

    private static JobRow Row(YamlEntry entry, IReadOnlyList<JobColumn> columns) => entry.Value switch
    {
        YamlMap map => new(entry.Key.Text, columns.Where(column => map.Find(column.Key) is not null).ToDictionary(column => column.Key, column => Shown(map.Find(column.Key)!.Value))) { IsPlain = true },
        _ => new(entry.Key.Text, new Dictionary<string, string>()),
    };

    private static string Shown(YamlNode node) => node is YamlScalar { IsEmpty: true } ? "" : YamlWriter.Flow(node);

    private static IEnumerable<IObjectShape> ObjectsIn(Shape shape) => shape is IObjectShape keys ? [keys] : shape.Parts.SelectMany(ObjectsIn);
}

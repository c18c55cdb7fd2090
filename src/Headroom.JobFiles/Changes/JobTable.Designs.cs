using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <content>The units of a design: what is written in it, and below it what it takes over from the design it is like.</content>
public sealed partial record JobTable
{
    private const string Designs = "designs";
    private const string None = "none";

    /// <summary>The key of the links of a design, which are a list: their rows are numbered from 1.</summary>
    public const string Links = "uplinks";

    /// <summary>The parts of a design that can be shown so.</summary>
    public static IReadOnlyList<string> UnitParts { get; } = ["switches", "injectors", "midspans", "standby", Links, "fittings"];

    /// <summary>Names of the design it is like that this one takes away.</summary>
    public IReadOnlyList<string> Gone { get; init; } = [];

    /// <summary>The design that all rows come from, where a list is taken over as a whole; null when it is written here.</summary>
    public string? AllFrom { get; init; }

    /// <summary>Reads a part of a design.</summary>
    /// <param name="text">The text of the job.</param>
    /// <param name="design">The id of the design.</param>
    /// <param name="part">One of <see cref="UnitParts"/>.</param>
    /// <returns>The table; without rows when nothing is written there.</returns>
    public static JobTable Of(string text, string design, string part)
    {
        var fields = ObjectsIn(DesignFields.Map).First().Fields;
        var columns = fields.First(field => field.Name == part).Shape.Parts.Prepend(fields.First(field => field.Name == part).Shape).SelectMany(ObjectsIn).First()
            .Fields.Select(field => new JobColumn(field.Name, field.Doc, field.Example)).ToList();
        var designs = (YamlText.Parse(text, "").Value as YamlMap)?.Find(Designs)?.Value as YamlMap;
        var table = part == Links ? Linked(designs, (design, []), columns) : Placed(designs, (design, part, []), columns);
        return table with { Path = [Designs, design, part] };
    }

    /// <summary>The keys of a part of a design as they are written there, each with its value on one line.</summary>
    /// <param name="text">The text of the job.</param>
    /// <param name="design">The id of the design.</param>
    /// <param name="part">The part, such as <c>patch</c>.</param>
    public static IReadOnlyList<(string Key, string Value)> Written(string text, string design, string part)
    {
        var designs = (YamlText.Parse(text, "").Value as YamlMap)?.Find(Designs)?.Value as YamlMap;
        return Part(designs, design, part) is YamlMap map ? [.. map.Entries.Select(entry => (entry.Key.Text, YamlWriter.Flow(entry.Value)))] : [];
    }

    private static YamlNode? Part(YamlMap? designs, string design, string part) => (designs?.Find(design)?.Value as YamlMap)?.Find(part)?.Value;

    private static string? Like(YamlMap? designs, string design, IReadOnlyList<string> seen) =>
        Part(designs, design, "like") is YamlScalar { Text: var like } && like != design && !seen.Contains(like) ? like : null;

    private static JobTable Placed(YamlMap? designs, (string Design, string Part, IReadOnlyList<string> Seen) of, List<JobColumn> columns)
    {
        var under = Like(designs, of.Design, of.Seen) is { } like ? Placed(designs, (like, of.Part, [.. of.Seen, of.Design]), columns) : new JobTable([], columns, []);
        var written = (Part(designs, of.Design, of.Part) as YamlMap)?.Entries ?? [];
        var rows = new List<JobRow>();
        foreach (var below in under.Rows)
        {
            var mine = written.FirstOrDefault(entry => YamlKey.Same(entry.Key.Text, below.Name));
            if (mine is null)
                rows.Add(below with { From = below.From ?? Like(designs, of.Design, of.Seen), Under = below.Cells });
            else if (!IsNone(mine.Value))
                rows.Add(Over(below, Row(mine, columns), of.Part));
        }

        var known = under.Rows.Select(row => row.Name).ToList();
        rows.AddRange(written.Where(entry => !IsNone(entry.Value) && !known.Exists(name => YamlKey.Same(name, entry.Key.Text))).Select(entry => Row(entry, columns)));
        return new([], columns, rows) { Gone = [.. written.Where(entry => IsNone(entry.Value)).Select(entry => entry.Key.Text)] };
    }

    // As a design is completed: of another model nothing of the supply or the day of the one before is taken over; a fitting is written as a whole.
    private static JobRow Over(JobRow below, JobRow mine, string part)
    {
        var other = mine.Cells.TryGetValue("model", out var model) && below.Cells.GetValueOrDefault("model") != model;
        var under = part == "fittings" ? [] : below.Cells.Where(cell => !other || cell.Key is not ("supply" or "since")).ToDictionary(cell => cell.Key, cell => cell.Value);
        return mine with { Cells = under.Where(cell => !mine.Cells.ContainsKey(cell.Key)).Concat(mine.Cells).ToDictionary(cell => cell.Key, cell => cell.Value), Under = under };
    }

    private static JobTable Linked(YamlMap? designs, (string Design, IReadOnlyList<string> Seen) of, List<JobColumn> columns) => Part(designs, of.Design, Links) switch
    {
        YamlList list => new([], columns, [.. list.Items.Select((item, at) => new JobRow($"{at + 1}", item is YamlMap ? CellsOf(YamlWriter.Flow(item)) : new Dictionary<string, string>()) { IsPlain = item is YamlMap })]),
        { } node when IsNone(node) => new([], columns, []) { Gone = [Links] },
        _ when Like(designs, of.Design, of.Seen) is { } like && Linked(designs, (like, [.. of.Seen, of.Design]), columns) is var under => under with
        {
            AllFrom = under.AllFrom ?? like, Gone = [], Rows = [.. under.Rows.Select(row => row with { From = under.AllFrom ?? like })],
        },
        _ => new([], columns, []),
    };

    private static bool IsNone(YamlNode node) => node is YamlScalar { Text: None };
}

using Headroom.Domain.Jobs;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Amending;

/// <summary>Puts what was changed into the text of a job file and into its tree, and leaves all else as it was written.</summary>
/// <param name="job">The job as it is.</param>
/// <param name="root">Its tree.</param>
/// <param name="file">Its text and name.</param>
/// <param name="slips">Takes the findings.</param>
internal sealed class AmendEdit(Job job, YamlMap root, (string Text, string Name) file, SheetSlips slips)
{
    private static readonly string[] OfOnePiece = ["length", "cable", "ambient", "bundle", "by"];
    private static readonly string[] Needed = ["from", "model"];

    private readonly List<(IReadOnlyList<string> Path, YamlEntry Entry)> _new = [];

    /// <summary>The text and the tree as they would be, without what cannot be changed: of that the findings tell, and then the tree only serves to find what else is wrong.</summary>
    public (string Text, YamlMap Tree) Apply(IReadOnlyList<AmendRow> rows)
    {
        foreach (var row in rows)
            row.IsTakenOut = row.Design is null ? row.IsGone : row.IsUnplugged && !IsFromAnother(row);
        var (splices, tree) = (new List<Splice>(), root);
        foreach (var group in rows.Where(IsSound).ToList().GroupBy(row => string.Join('\n', row.Path)))
            tree = Section(tree, [.. group], splices);
        // From the end, so that what lies in front of a change stays where it is.
        var text = splices.OrderByDescending(splice => splice.Start).Aggregate(file.Text, (now, splice) => splice.Apply(now));
        foreach (var group in _new.GroupBy(one => string.Join('\n', one.Path)))
        {
            var (path, entries) = (group.First().Path, group.Select(one => one.Entry).ToList());
            var edit = JobFileEditor.PutRows(text, path, entries, isList: false);
            if (edit.Text is null || TreeGraft.Put(tree, path, entries, isList: false) is not YamlMap grafted)
            {
                slips.Take(edit.Findings.Select(finding => finding with { At = finding.At with { File = file.Name } }));
                continue;
            }

            (text, tree) = (edit.Text, grafted);
        }

        return (text, tree);
    }

    private YamlMap Section(YamlMap tree, List<AmendRow> rows, List<Splice> splices)
    {
        var path = rows[0].Path;
        var map = path.Aggregate((YamlNode?)root, (node, key) => (node as YamlMap)?.Find(key)?.Value) as YamlMap;
        var section = map is null ? null : new AmendSection(new TextLines(file.Text), map, slips);
        var changed = new List<(YamlEntry Entry, AmendRow Row)>();
        foreach (var row in rows)
        {
            if (section?.Find(row.Key) is { } entry)
                changed.Add((entry, row));
            else
                Add(row);
        }

        foreach (var group in changed.GroupBy(one => one.Entry))
            section!.Change(group.Key, [.. group.Select(one => one.Row)], OwnOf(rows[0]));
        if (section is null || changed.Count == 0)
            return tree;
        splices.AddRange(section.Splices);
        return (YamlMap)Replaced(tree, path, section.Tree);
    }

    private void Add(AmendRow row)
    {
        // A cord may be that of the design which this one is like: here it is written over.
        var inherited = row.Design is not null && job.Designs.FirstOrDefault(design => design.Id == row.Design)?.Patch.All(patch => patch.What != row.Key) == true;
        if (!row.IsNew && (!inherited || (row.IsGone && !IsFromAnother(row))))
        {
            slips.Refuse(SheetCodes.Elsewhere, row.At, ($"{row.Key} stands in a sheet that the job names, not in {file.Name}", "a thing that stands in the job file", "change it in that sheet"));
            return;
        }

        var value = row.Design is not null && !row.IsNew ? Whole(row) : AmendSection.New(row);
        _new.Add((row.Path, new YamlEntry(new YamlScalar(row.Key, YamlStyle.Plain, row.At, (0, 0)), value)));
    }

    // What of an inherited cord was not changed is that of the design it comes from.
    private YamlScalar Whole(AmendRow row)
    {
        var at = DesignLineage.Whole(job, row.Design!)!.Patch.First(patch => patch.What == row.Key).To;
        var (unit, port) = (at.Unit, at.Port?.ToString(System.Globalization.CultureInfo.InvariantCulture));
        foreach (var (column, _, after, _) in row.Cells)
            (unit, port) = column.Name == "unit" ? (after!, port) : (unit, after);
        return new YamlScalar(unit is null ? "none" : port is null ? unit : $"{unit}/{port}", YamlStyle.Plain, row.Cells[0].Cell.At, (0, 0));
    }

    private bool IsFromAnother(AmendRow row) => job.Designs.First(design => design.Id == row.Design).Like is { } like && DesignLineage.Whole(job, like)?.Patch.Any(patch => patch.What == row.Key) == true;

    private Func<string, string?> OwnOf(AmendRow row) => row switch
    {
        { Design: { } design } => name => job.Designs.First(one => one.Id == design).Patch.FirstOrDefault(patch => patch.What == name)?.To.ToString(),
        { Table.Name: "endpoints" } => name => job.Survey.Endpoints.FirstOrDefault(endpoint => endpoint.Id == name)?.Drop,
        _ => _ => null,
    };

    private bool IsSound(AmendRow row)
    {
        var before = slips.Findings.Count;
        Check(row);
        return slips.Findings.Count == before;
    }

    private void Check(AmendRow row)
    {
        foreach (var (column, _, _, cell) in row.Cells.Where(cell => cell.After is null && (Needed.Contains(cell.Column.Name) || (cell.Column.Name == "unit" && !row.Cells.Any(other => other.Column.Name == "port" && other.After is null)))))
            slips.Refuse(SheetCodes.CannotBeEmpty, cell.At, ($"{cell.Name} is empty, where {row.Key} has its {column.Name}", "something in it", row.Design is null ? "write it again" : "empty the port too where nothing is plugged in any more"));
        if (row is { IsNew: true } && row.Cells.Where(cell => Needed.Contains(cell.Column.Name) || cell.Column.Name == "unit").All(cell => cell.After is null))
            slips.Refuse(SheetCodes.CannotBeEmpty, row.At, ($"{row.Key} is new, and its {Words.Or([.. row.Table.Columns.Where(column => Needed.Contains(column.Name) || column.Name == "unit").Select(column => column.Name)])} is empty", "something in it", "write it, or take the row out"));
        if (job.Survey.Drops.FirstOrDefault(drop => row.Table.Name == "drops" && drop.Id == row.Key) is { Pieces.Count: > 1 } drop && row.Cells.Find(cell => OfOnePiece.Contains(cell.Column.Name)) is { Cell: not null } piece)
            slips.Refuse(SheetCodes.Elsewhere, piece.Cell.At, ($"{piece.Cell.Name} changes {piece.Column.Name} of {row.Key}, whose run is in {drop.Pieces.Count} pieces", "a run in one piece", $"change its pieces in {drop.At}"));
        if (job.Survey.Endpoints.FirstOrDefault(endpoint => row.Table.Name == "endpoints" && endpoint.Id == row.Key)?.CountedAs is { } counted)
            slips.Refuse(SheetCodes.Elsewhere, row.At, ($"{row.Key} is one of '{counted}', which have no names of their own", "an endpoint that is written by its name", "write it by its name in the job file first"));
    }

    private static YamlNode Replaced(YamlNode node, IReadOnlyList<string> path, YamlNode with)
    {
        if (path.Count == 0)
            return with;
        var map = (YamlMap)node;
        var old = map.Find(path[0])!;
        return new YamlMap([.. map.Entries.Select(entry => entry == old ? entry with { Value = Replaced(entry.Value, [.. path.Skip(1)], with) } : entry)], map.IsFlow, map.At, (map.Start, map.End));
    }
}

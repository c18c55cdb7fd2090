using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Tables;
using Headroom.JobFiles.Amending;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Takes edited tables of drops, endpoints and patching back into a job file. Nothing is written here: what would be is handed out whole, or not at all.</summary>
public static class JobAmending
{
    /// <summary>The tables that can be taken back.</summary>
    public static IReadOnlyList<string> Kinds => JobTables.Names;

    /// <summary>Reads edited tables beside a job, and sees what the job would be with what was changed in them.</summary>
    /// <param name="job">The job file, as the person named it.</param>
    /// <param name="plan">The tables.</param>
    /// <param name="catalogue">The models that are known.</param>
    public static AmendedJob Read(string job, AmendPlan plan, Catalogue catalogue)
    {
        var text = TextFile.Read(job);
        if (text.Value is not { } before)
            return new(text.Findings);
        var read = JobFile.Parse(before, job, catalogue, JobFile.FolderOf(job));
        if (read is not { Ok: true, Value: { } known } || YamlText.Parse(before, job).Value is not YamlMap root)
            return new(read.Findings);
        var slips = new SheetSlips();
        var reader = new BackReader(slips);
        var tables = reader.Read(plan.File, plan.Kind);
        var rows = new AmendRows(known, slips, plan.TakeOut);
        tables.ForEach(rows.Read);
        rows.RefuseWhatIsNotGone(plan.File);
        var told = new AmendedJob(slips.Findings) { Read = [.. tables.Select(table => table.Name)], NotRead = reader.NotRead, Changes = [.. rows.Rows.SelectMany(Lines)] };
        if (rows.Rows.Count == 0)
            return told;
        var edit = new AmendEdit(known, root, (before, job), slips).Apply(rows.Rows);
        return Checked(edit, (before, job), told with { Findings = slips.Findings }, catalogue);
    }

    private static AmendedJob Checked((string Text, YamlMap Tree) edit, (string Text, string Name) before, AmendedJob told, Catalogue catalogue)
    {
        // The tree still knows the cell of each value, so what is wrong with the job as it would be is told at the cell.
        var join = new SheetJoin(JobFile.FolderOf(before.Name));
        var whole = edit.Tree.Find(JobFile.SheetsKey)?.Value is { } sheets ? join.Join(edit.Tree, sheets) : edit.Tree;
        var wrong = JobFile.Build(whole, join.Findings, () => catalogue, join.Left).Findings.Where(finding => finding.Severity == Severity.Error).ToList();
        if (wrong.Count > 0 || told.Findings.Any(finding => finding.Severity == Severity.Error))
            return told with { Findings = [.. told.Findings, .. wrong] };
        if (YamlText.Parse(edit.Text, before.Name).Value is not { } again || !TreeCheck.Same(again, edit.Tree) || !JobFile.Parse(edit.Text, before.Name, catalogue, JobFile.FolderOf(before.Name)).Ok)
            return told with { Findings = [.. told.Findings, new Finding(Severity.Error, EditCodes.NotSafe.Code, new Place(before.Name, 0, 0), "a way of writing in which this cannot be changed safely", "plain lines or brackets", "put it in by hand")] };
        return told with { Before = before.Text, Text = edit.Text };
    }

    private static IEnumerable<string> Lines(AmendRow row)
    {
        var name = row.Design is null ? $"{row.Table.Name} {row.Key}" : $"patching of {row.Design}, {row.Key}";
        if (row.IsGone)
            yield return $"{name} is taken out";
        else if (row.IsNew)
            yield return $"{name} is new: {string.Join(", ", row.Cells.Select(cell => $"{cell.Column.Name} {cell.After ?? "not known"}"))}";
        else
        {
            foreach (var (column, before, after, cell) in row.Cells)
                yield return $"{name}, {column.Name}: {before} becomes {after ?? (row.Design is null ? "not known" : "nothing")} ({cell.Name})";
        }
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Takes a sheet over into a job file. Nothing is written here: what would be is handed out whole, or not at all.</summary>
public static class SheetImport
{
    /// <summary>The words for the kinds of sheet.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. SheetKinds.All.Select(kind => kind.Name)];

    /// <summary>The words for what stands between cells.</summary>
    public static IReadOnlyList<string> Separators { get; } = [.. SheetSeparator.Words.Select(known => known.Word)];

    /// <summary>The words for decimal signs.</summary>
    public static IReadOnlyList<string> Decimals { get; } = [SheetNumbers.Comma, SheetNumbers.Point];

    /// <summary>The words for the order of days.</summary>
    public static IReadOnlyList<string> Days => SheetDays.Orders;

    /// <summary>The words for encodings.</summary>
    public static IReadOnlyList<string> Encodings => SheetEncoding.Words;

    /// <summary>Reads a sheet beside a job, and sees what the job would be with its rows in it.</summary>
    /// <param name="job">The job file, as the person named it.</param>
    /// <param name="plan">The sheet.</param>
    /// <param name="catalogue">The models that are known.</param>
    /// <returns>How the sheet was understood, with all findings about it and about the job with it.</returns>
    public static ImportedSheet Read(string job, SheetPlan plan, Catalogue catalogue)
    {
        var text = TextFile.Read(job);
        return text.Value is null ? Nothing(text.Findings) : Read(text.Value, (job, plan), catalogue);
    }

    private static ImportedSheet Read(string text, (string Job, SheetPlan Plan) named, Catalogue catalogue)
    {
        var tree = YamlText.Parse(text, named.Job);
        if (tree.Value is not YamlMap root)
            return Nothing(JobFile.Parse(text, named.Job, catalogue).Findings);
        if (IsNamed(root, named) is { } already)
            return Nothing([already]);
        var join = new SheetJoin(JobFile.FolderOf(named.Job));
        var whole = root.Find(JobFile.SheetsKey)?.Value is { } sheets ? join.Join(root, sheets) : root;
        var (joined, sheet, path) = join.Add(whole, named.Plan);
        var read = JobFile.Build(joined, [.. tree.Findings, .. join.Findings], () => catalogue, join.Left);
        var told = Told(sheet, read.Findings);
        return read.Ok && path is not null ? Edited(text, (named.Job, catalogue), (sheet, path), told) : told;
    }

    private static ImportedSheet Edited(string text, (string Name, Catalogue Catalogue) job, (SheetRead Read, IReadOnlyList<string> Path) sheet, ImportedSheet told)
    {
        var edit = JobFileEditor.PutRows(text, sheet.Path, sheet.Read.Entries, sheet.Read.Kind.IsList);
        if (edit.Text is not { } written)
            return told with { Findings = [.. told.Findings, .. edit.Findings.Select(finding => finding with { At = finding.At with { File = job.Name } })] };
        // The same rows, now as text: what was sound before must be so still.
        var again = JobFile.Parse(written, job.Name, job.Catalogue, JobFile.FolderOf(job.Name));
        return again.Ok
            ? told with { Text = written, Before = text, Place = string.Join('/', sheet.Path), Lines = Lines(sheet.Read) }
            : told with { Findings = [.. told.Findings, .. again.Findings] };
    }

    private static List<string> Lines(SheetRead sheet) =>
        [.. sheet.Entries.Select(entry => sheet.Kind.IsList ? "- " + YamlWriter.Flow(entry.Value) : RowsEdit.Entry(entry))];

    // What is merely asked about the job and its other sheets is asked when the job is checked.
    private static ImportedSheet Told(SheetRead sheet, IReadOnlyList<Finding> findings) => new([.. findings.Where(finding => finding.Severity == Severity.Error || finding.At.File == sheet.Plan.File)])
    {
        Facts = sheet.Facts,
        Columns = [.. sheet.Columns.Select(column => Column(column, sheet.Plan))],
        Rows = sheet.Rows.All,
        Left = sheet.Rows.Left,
        PassedOver = sheet.Rows.PassedOver,
        Sums = [.. sheet.Tallies.Where(tally => tally.Sum() is not null).Select(tally => KeyValuePair.Create(tally.Column.Field!.Name, tally.Sum()!))],
    };

    private static ImportedColumn Column(SheetColumn column, SheetPlan plan) => new(
        SheetCell.Letters(column.Index),
        column.Heading.Text,
        column.IsTaken || column.Field?.Kind == CellKind.Unit ? column.Field!.Name : null,
        column.Field is { Kind: CellKind.Aside } aside ? aside.Name : column.Field is null && SheetColumns.Said(plan, column.Heading) is not null ? "as you say" : null,
        column.Unit);

    private static ImportedSheet Nothing(IReadOnlyList<Finding> findings) => new(findings);

    // A sheet that the job names is read with it each time: taken over too, all of it would stand there twice.
    private static Finding? IsNamed(YamlMap root, (string Job, SheetPlan Plan) named)
    {
        if (root.Find(JobFile.SheetsKey)?.Value is not YamlList list)
            return null;
        var folder = JobFile.FolderOf(named.Job);
        foreach (var file in list.Items.OfType<YamlMap>().Where(map => map.Find("as")?.Value is YamlScalar kind && kind.Text == named.Plan.Kind).Select(map => map.Find("file")?.Value).OfType<YamlScalar>())
        {
            if (Path.GetFullPath(Path.Combine(folder, file.Text)) == Path.GetFullPath(named.Plan.File))
                return new Finding(Severity.Error, SheetCodes.InJob.Code, file.At, $"the job names the sheet {file.Text} already, and reads it each time", "a sheet named in the job, or its rows written into the job", "change the sheet itself, or take it out of 'sheets:' first");
        }

        return null;
    }
}

using Headroom.Domain.Findings;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>Reads the sheets that a job names, and puts their rows into its tree as if they stood there.</summary>
internal sealed class SheetJoin(string? folder)
{
    private readonly List<Finding> _findings = [];
    private LeftRows _left = new();

    /// <summary>The findings about all sheets.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>True when a sheet could not be taken over whole.</summary>
    public bool Stands => _findings.Any(finding => finding.Severity == Severity.Error);

    /// <summary>What is known of the rows that were left; null when every sheet was taken over whole.</summary>
    public LeftRows? Left => Stands ? _left : null;

    /// <summary>The files that a list of sheets names, without those that lie elsewhere.</summary>
    public static IReadOnlyList<string> NamesIn(YamlNode sheets) =>
        SheetFields.List.Read(sheets, new FieldReader(JobFile.CodePrefix), out var plans) ? [.. plans.Where(IsInside).Select(plan => plan.File).Distinct()] : [];

    /// <summary>The job with the rows of all its sheets.</summary>
    public YamlMap Join(YamlMap root, YamlNode sheets)
    {
        // The slips of the list itself are found when the job is read; here only the plans are wanted.
        if (!SheetFields.List.Read(sheets, new FieldReader(JobFile.CodePrefix), out var plans))
        {
            _left = LeftRows.AnyRow;
            return root;
        }

        foreach (var plan in plans)
        {
            if (Beside(plan) is { } beside)
                root = Add(root, beside).Root;
            else
                _left = LeftRows.AnyRow;
        }

        return root;
    }

    /// <summary>The job with the rows of one sheet.</summary>
    /// <returns>The job, as it was when a finding stands in the way, and the sheet.</returns>
    public (YamlMap Root, SheetRead Sheet, IReadOnlyList<string>? Path) Add(YamlMap root, SheetPlan plan)
    {
        var site = new SheetSite(root);
        var sheet = SheetReader.Read(plan, site);
        _findings.AddRange(sheet.Findings);
        _left = _left.And(sheet.LeftRows);
        // Rows without a slip are put in even beside others with one, so that all that is wrong with them is found in the same go.
        if (Path(sheet, site) is not { } path || sheet.Entries.Count == 0)
            return (root, sheet, null);
        // What is no map or list there is refused when the job is read.
        return (TreeGraft.Put(root, path, sheet.Entries, sheet.Kind.IsList) as YamlMap ?? root, sheet, path);
    }

    private List<string>? Path(SheetRead sheet, SheetSite site)
    {
        if (sheet.Kind != SheetKinds.Patching)
            return [.. sheet.Kind.Section];
        if ((sheet.Plan.Design ?? site.Design) is { } design && site.Designs.Contains(design))
            return ["designs", design, .. sheet.Kind.Section];
        var known = site.Designs.Count == 0 ? "the job has no design" : $"the job has {Words.Or(site.Designs)}";
        _findings.Add(new Finding(Severity.Error, SheetCodes.NoDesign.Code, sheet.Plan.At, $"the patching of {sheet.Plan.File} belongs to {(sheet.Plan.Design is { } named ? $"design '{named}'" : "no design that is named")}", $"a design of the job; {known}", $"say which: 'design: {(site.Designs.Count > 0 ? site.Designs[0] : "as-quoted")}'"));
        return null;
    }

    private static bool IsInside(SheetPlan plan) =>
        !System.IO.Path.IsPathRooted(plan.File) && !plan.File.Split('/', '\\').Contains("..") && !plan.File.Contains(':', StringComparison.Ordinal);

    // A job that came by mail may not name files elsewhere on the machine.
    private SheetPlan? Beside(SheetPlan plan)
    {
        if (folder is not null && IsInside(plan))
            return plan with { File = System.IO.Path.Combine(folder, plan.File) };
        var given = folder is null ? "a sheet is named in a job that is no file" : $"the sheet '{Words.Short(plan.File)}'";
        _findings.Add(new Finding(Severity.Error, SheetCodes.NotBeside.Code, plan.At, given, "a file beside the job or in a folder below it", folder is null ? "save the job as a file" : "put the sheet beside the job, and name it without its folder"));
        return null;
    }
}

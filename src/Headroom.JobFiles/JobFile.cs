using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Rules;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Reads job files.</summary>
public static class JobFile
{
    /// <summary>The letters in front of the codes of findings about what a job says.</summary>
    public const string CodePrefix = "JOB";

    /// <summary>The key below which a job names its sheets.</summary>
    internal const string SheetsKey = "sheets";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <param name="catalogue">The models that are known; null to leave models unchecked.</param>
    /// <param name="rates">What the firm charges where the job does not say otherwise; null for nothing.</param>
    /// <returns>The job as far as it could be read, with all findings in order of place.</returns>
    public static Loaded<Job> Read(string path, Catalogue? catalogue, FirmRates? rates = null)
    {
        var text = TextFile.Read(path);
        return text.Value is null ? new(null, text.Findings) : ParseMeanwhile(text.Value, path, FolderOf(path), () => catalogue, rates);
    }

    /// <summary>Reads a text. Sheets that it names cannot be read, since it lies nowhere.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <param name="name">The name that findings give it.</param>
    /// <param name="catalogue">The models that are known; null to leave models unchecked.</param>
    /// <returns>The job as far as it could be read, with all findings in order of place.</returns>
    public static Loaded<Job> Parse(string text, string name, Catalogue? catalogue) => Parse(text, name, catalogue, null);

    /// <summary>Reads a text while somebody else fetches the models.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <param name="name">The name that findings give it.</param>
    /// <param name="folder">The folder in which it lies, for the sheets that it names; null when it lies nowhere.</param>
    /// <param name="catalogue">Asked once, when the models are needed: those that are known, or null to leave models unchecked.</param>
    /// <param name="rates">What the firm charges where the job does not say otherwise; null for nothing.</param>
    /// <returns>The job as far as it could be read, with all findings in order of place.</returns>
    public static Loaded<Job> ParseMeanwhile(string text, string name, string? folder, Func<Catalogue?> catalogue, FirmRates? rates = null)
    {
        var tree = YamlText.Parse(text, name);
        if (rates is not null && tree.Value is not null)
            tree = tree with { Value = FirmRatesFile.Under(tree.Value, rates) };
        if (tree.Value is not YamlMap root || root.Find(SheetsKey)?.Value is not { } sheets)
            return tree.Value is null ? new(null, tree.Findings) : Build(tree.Value, tree.Findings, catalogue, left: null);
        return WithSheets(root, sheets, (tree.Findings, catalogue), folder);
    }

    /// <summary>The folder of a file, as it was named.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The folder; empty for the one that the program runs in.</returns>
    public static string FolderOf(string path) => Path.GetDirectoryName(path) ?? "";

    /// <summary>The sheets that a job names, as far as they lie beside it or below.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <returns>Their names as written.</returns>
    public static IReadOnlyList<string> SheetsOf(string text) =>
        YamlText.Parse(text, "").Value is YamlMap root && root.Find(SheetsKey)?.Value is { } sheets ? SheetJoin.NamesIn(sheets) : [];

    /// <summary>Makes what reading the keys in a text needs, so that whoever reads it need not wait for that.</summary>
    /// <param name="text">The text of a job file.</param>
    public static void Prepare(string text) => Prepare(JobFields.Shape, text);

    private static void Prepare(Shape shape, string text)
    {
        if (shape is not IObjectShape keys)
        {
            foreach (var part in shape.Parts)
                Prepare(part, text);
            return;
        }

        foreach (var field in keys.Fields)
        {
            if (text.Contains(field.Name, StringComparison.Ordinal))
                Prepare(field.Shape, text);
        }
    }

    /// <summary>Reads the text of a file that lies in a folder, with the sheets that it names there.</summary>
    internal static Loaded<Job> Parse(string text, string name, Catalogue? catalogue, string? folder) => ParseMeanwhile(text, name, folder, () => catalogue);

    /// <summary>Builds the job of a tree; the rows of its sheets that could not be taken over are null when all could.</summary>
    internal static Loaded<Job> Build(YamlNode tree, IEnumerable<Finding> before, Func<Catalogue?> catalogue, LeftRows? left)
    {
        var reader = new FieldReader(CodePrefix);
        var job = JobFields.Shape.Read(tree, reader, out var read) ? read : null;
        var findings = new List<Finding>([.. before, .. reader.Findings]);
        // The rules about the whole speak of things that are missing; behind an error they would speak of what was left out here,
        // so only names are checked then that nothing which was left out can have.
        // Without one they must be asked: a thing that is merely empty is left out too, and what names it would dangle.
        if (job is not null && catalogue() is { } models)
        {
            var isAll = left is null && !(reader.LeftOut && findings.Exists(finding => finding.Severity == Severity.Error));
            findings.AddRange(isAll ? JobRules.Check(job, models) : JobRules.CheckNames(job, models, NamesWritten.In(tree, left).MayHave));
        }

        return new(job, YamlText.InOrder(findings));
    }

    // In a method of its own, so that a job without sheets loads nothing of them.
    private static Loaded<Job> WithSheets(YamlMap root, YamlNode sheets, (IReadOnlyList<Finding> Findings, Func<Catalogue?> Catalogue) read, string? folder)
    {
        var join = new SheetJoin(folder);
        var joined = join.Join(root, sheets);
        return Build(joined, [.. read.Findings, .. join.Findings], read.Catalogue, join.Left);
    }
}

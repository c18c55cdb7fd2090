using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Rules;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Reads job files.</summary>
public static class JobFile
{
    /// <summary>The letters in front of the codes of findings about what a job says.</summary>
    public const string CodePrefix = "JOB";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <param name="catalogue">The models that are known; null to leave models unchecked.</param>
    /// <returns>The job as far as it could be read, with all findings in order of place.</returns>
    public static Loaded<Job> Read(string path, Catalogue? catalogue)
    {
        var text = TextFile.Read(path);
        return text.Value is null ? new(null, text.Findings) : Parse(text.Value, path, catalogue);
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <param name="name">The name that findings give it.</param>
    /// <param name="catalogue">The models that are known; null to leave models unchecked.</param>
    /// <returns>The job as far as it could be read, with all findings in order of place.</returns>
    public static Loaded<Job> Parse(string text, string name, Catalogue? catalogue) => ParseMeanwhile(text, name, () => catalogue);

    /// <summary>Reads a text while somebody else fetches the models.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <param name="name">The name that findings give it.</param>
    /// <param name="catalogue">Asked once, when the models are needed: those that are known, or null to leave models unchecked.</param>
    /// <returns>The job as far as it could be read, with all findings in order of place.</returns>
    public static Loaded<Job> ParseMeanwhile(string text, string name, Func<Catalogue?> catalogue)
    {
        var tree = YamlText.Parse(text, name);
        if (tree.Value is null)
            return new(null, tree.Findings);
        var reader = new FieldReader(CodePrefix);
        var job = JobFields.Shape.Read(tree.Value, reader, out var read) ? read : null;
        var findings = new List<Finding>([.. tree.Findings, .. reader.Findings]);
        // The rules about the whole speak of things that are missing; behind an error they would speak of what was left out here.
        // Without one they must be asked: a thing that is merely empty is left out too, and what names it would dangle.
        if (job is not null && !(reader.LeftOut && findings.Exists(finding => finding.Severity == Severity.Error)))
            findings.AddRange(Rules(job, catalogue()));
        return new(job, YamlText.InOrder(findings));
    }

    /// <summary>Makes the tables of keys that reading a job needs, so that a first reader need not wait for them.</summary>
    public static void Prepare() => System.Runtime.CompilerServices.RuntimeHelpers.RunClassConstructor(typeof(JobFields).TypeHandle);

    private static IReadOnlyList<Finding> Rules(Job job, Catalogue? catalogue) => catalogue is null ? [] : JobRules.Check(job, catalogue);
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Puts one record, told by its keys, into a job file: a reading or an overruling. Nothing is written here.</summary>
public static class JobRecord
{
    private const string Typed = "what was typed";

    /// <summary>The keys of a reading, in the order of the manual.</summary>
    public static IReadOnlyList<string> ReadingKeys => [.. ReadingFields.Shape.Fields.Select(key => key.Name)];

    /// <summary>The keys of an overruling, in the order of the manual.</summary>
    public static IReadOnlyList<string> OverrulingKeys => [.. OverrulingFields.Shape.Fields.Select(key => key.Name)];

    /// <summary>Puts a reading in.</summary>
    /// <param name="job">The job file, as the person named it.</param>
    /// <param name="fields">Its keys with what is written behind them.</param>
    /// <param name="catalogue">The models that are known.</param>
    /// <returns>The job with the reading in it, or why there is none.</returns>
    public static RecordedJob AddReading(string job, IReadOnlyList<KeyValuePair<string, string>> fields, Catalogue catalogue) =>
        Put(job, (ReadingFields.Shape, fields), JobFileEditor.AddReading, catalogue);

    /// <summary>Puts an overruling in, or replaces the one of the same entry.</summary>
    /// <param name="job">The job file, as the person named it.</param>
    /// <param name="fields">Its keys with what is written behind them.</param>
    /// <param name="catalogue">The models that are known.</param>
    /// <returns>The job with the overruling in it, or why there is none.</returns>
    public static RecordedJob AddOverruling(string job, IReadOnlyList<KeyValuePair<string, string>> fields, Catalogue catalogue) =>
        Put(job, (OverrulingFields.Shape, fields), JobFileEditor.AddOverruling, catalogue);

    /// <summary>Puts a design in.</summary>
    /// <param name="job">The job file, as the person named it.</param>
    /// <param name="design">The design, saying only what differs from the one it is like.</param>
    /// <param name="catalogue">The models that are known.</param>
    /// <returns>The job with the design in it, or why there is none.</returns>
    public static RecordedJob AddDesign(string job, Design design, Catalogue catalogue)
    {
        var text = TextFile.Read(job);
        return text.Value is null
            ? new(null, null, text.Findings)
            : Checked(job, text.Value, JobFileEditor.PutDesign(text.Value, design.Id, DesignText.Of(design)), catalogue);
    }

    private static RecordedJob Put<T>(
        string job, (ObjectShape<T> Shape, IReadOnlyList<KeyValuePair<string, string>> Fields) told, Func<string, T, Edit> put, Catalogue catalogue)
        where T : class
    {
        var text = TextFile.Read(job);
        if (text.Value is null)
            return new(null, null, text.Findings);
        var reader = new FieldReader(JobFile.CodePrefix);
        using var step = reader.Into("the " + told.Shape.Noun);
        if (!told.Shape.Read(MapOf(told.Fields), reader, out var record) || reader.Findings.Count > 0)
            return new(null, null, reader.Findings);
        return Checked(job, text.Value, put(text.Value, record), catalogue);
    }

    private static RecordedJob Checked(string job, string before, Edit edit, Catalogue catalogue)
    {
        if (edit.Text is null)
            return new(null, null, [.. edit.Findings.Select(finding => finding with { At = finding.At with { File = job } })]);
        var read = JobFile.Parse(edit.Text, job, catalogue, JobFile.FolderOf(job));
        return read.Ok ? new(before, edit.Text, read.Findings) : new(null, null, read.Findings);
    }

    private static YamlMap MapOf(IReadOnlyList<KeyValuePair<string, string>> fields)
    {
        var at = new Place(Typed, 0, 0);
        return new YamlMap([.. fields.Select(pair => new YamlEntry(Scalar(pair.Key), Scalar(pair.Value)))], isFlow: true, at, (0, 0));
        YamlScalar Scalar(string text) => new(text, YamlStyle.Plain, at, (0, 0));
    }
}

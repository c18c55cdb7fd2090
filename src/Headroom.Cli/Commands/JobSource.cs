using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.JobFiles;
using Headroom.JobFiles.Files;

namespace Headroom.Cli.Commands;

/// <summary>Reads a job as a person names it: a file, a folder that holds one, or <c>-</c> for standard input.</summary>
internal static class JobSource
{
    private const string FileInFolder = "job.yaml";
    private const string StandardInput = "standard input";

    /// <summary>Reads the job with the shipped models and the firm's own.</summary>
    /// <param name="job">The job as named.</param>
    /// <param name="catalogues">The firm's own catalogue files.</param>
    /// <param name="desk">Where standard input comes from.</param>
    /// <param name="models">The models it was read with; null when they could not be read.</param>
    /// <param name="ratesFile">The firm's file of rates; null for none.</param>
    public static Loaded<Job> Read(string job, IReadOnlyList<string> catalogues, Desk desk, out Catalogue? models, string? ratesFile = null)
    {
        models = null;
        var rates = ratesFile is null ? null : FirmRatesFile.Read(ratesFile);
        if (rates is { Value: null })
            return new(null, rates.Findings);
        var (text, name) = job == "-" ? (FromInput(desk), StandardInput) : (TextFile.Read(PathOf(job)), PathOf(job));
        var ahead = ModelsAhead.Start(catalogues, text.Value ?? "");
        var read = text.Value is null ? new(null, text.Findings) : JobFile.ParseMeanwhile(text.Value, name, job == "-" ? null : JobFile.FolderOf(name), () => ahead.Usable, rates?.Value);
        models = ahead.Usable;
        return read with { Findings = [.. ahead.Models.Findings, .. rates?.Findings ?? [], .. read.Findings] };
    }

    /// <summary>Reads the shipped models, then the firm's own over them.</summary>
    public static Loaded<Catalogue> Models(IReadOnlyList<string> catalogues)
    {
        var shipped = Shipped();
        if (catalogues.Count == 0 || shipped.Value is null)
            return shipped;
        var own = CatalogueFiles.Read(catalogues, shipped.Value);
        return own with { Findings = [.. shipped.Findings, .. own.Findings] };
    }

    // What is only a question about a shipped model is asked by "catalogue check", not in every study.
    private static Loaded<Catalogue> Shipped()
    {
        var shipped = ShippedAhead.Opened ?? CatalogueFiles.ReadShipped();
        return shipped with { Findings = [.. shipped.Findings.Where(FindingsReport.IsError)] };
    }

    /// <summary>The file that a person means: in a folder, the job in it.</summary>
    public static string PathOf(string job) => Directory.Exists(job) ? Path.Combine(job, FileInFolder) : job;

    private static Loaded<string> FromInput(Desk desk)
    {
        using var input = desk.Input();
        return TextFile.Read(input, StandardInput);
    }
}

using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.JobFiles;
using Headroom.Store;

namespace Headroom.Desk.Work;

/// <summary>Takes jobs out of the store, reads and studies them, and keeps the last of both.</summary>
internal sealed class JobShelf(JobStore store, ModelShelf models, DeskSettings settings)
{
    /// <summary>The name a job has in findings and workings.</summary>
    public const string FileName = "job.yaml";

    private const int MostJobs = 120;
    private const int MostStudies = 60;

    private readonly Recent<(string, int, ModelsAtHand), OpenJob> _open = new(MostJobs);
    private readonly Recent<(string, int, ModelsAtHand, string, DateOnly), StudiedDesign> _studied = new(MostStudies);

    /// <summary>The day.</summary>
    public DateOnly Today => DateOnly.FromDateTime(settings.Clock.GetLocalNow().DateTime);

    /// <summary>Opens a revision; null when there is none such.</summary>
    /// <param name="id">The job.</param>
    /// <param name="number">The revision; null for the last.</param>
    public OpenJob? Open(string id, int? number = null)
    {
        if (store.Find(id) is not { } job || number is < 1 || number > job.Head)
            return null;
        var (wanted, now) = (number ?? job.Head, models.Now);
        var open = _open.Get((id, wanted, now), () =>
        {
            if (store.Read(id, wanted) is not { } text)
                return null;
            var read = Read(text, now);
            return new OpenJob(job, wanted, text, read.Value, read.Findings, now);
        });
        return open is null ? null : open with { Stored = job };
    }

    /// <summary>Studies a design; null when the job has none such, or cannot be worked with.</summary>
    /// <param name="open">The job.</param>
    /// <param name="design">The design; null for the chosen one.</param>
    public StudiedDesign? Study(OpenJob open, string? design = null)
    {
        if (open.Sound is not { } job || Engineering.Study.DesignOf(job, design) is not { } whole)
            return null;
        var today = Today;
        return _studied.Get((open.Stored.Id, open.Number, open.Models, whole.Id, today), () => Study(job, open.Models, whole.Id, today));
    }

    /// <summary>Studies a job that may not be in the store.</summary>
    public static StudiedDesign Study(Job job, ModelsAtHand models, string design, DateOnly on)
    {
        var request = new StudyRequest(design, on, [], null);
        var results = Engineering.Study.Results(job, models.Models, request);
        return new(job, results, Engineering.Study.LedgerOf(results, request), request);
    }

    /// <summary>Reads a job as it would be read from a file beside its sheets.</summary>
    public Loaded<Job> Read(JobText text) => Read(text, models.Now);

    private Loaded<Job> Read(JobText text, ModelsAtHand with)
    {
        if (text.Files.Count == 0)
            return JobFile.ParseMeanwhile(text.Text, FileName, null, () => with.Models, with.Rates);
        var folder = Directory.CreateDirectory(Path.Combine(settings.Place.Folder, "work", Guid.NewGuid().ToString("N"))).FullName;
        try
        {
            foreach (var (name, bytes) in text.Files)
            {
                var path = Path.Combine(folder, name);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, bytes.Span);
            }

            var read = JobFile.ParseMeanwhile(text.Text, FileName, folder, () => with.Models, with.Rates);
            return read with { Findings = [.. read.Findings.Select(finding => finding with { At = Beside(finding.At, folder) })] };
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Place Beside(Place at, string folder) =>
        at.File.StartsWith(folder, StringComparison.Ordinal) ? at with { File = at.File[folder.Length..].TrimStart('/', '\\') } : at;
}

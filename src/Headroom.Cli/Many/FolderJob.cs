using Headroom.Cli.Commands;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Cli.Many;

/// <summary>Reads one job of many and works on it; what stands in the way is said of that job and does not hold up the others.</summary>
internal static class FolderJob
{
    /// <summary>Works on a job file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="with">The models, what is wanted and what the firm charges.</param>
    /// <param name="work">Works on the job; told with it how many findings it had.</param>
    /// <param name="not">Makes what stands for a job that could not be worked out: its name where that could be read, the number of findings, why.</param>
    public static T Work<T>(string file, (Catalogue Models, StudyRequest Request, FirmRates? Rates) with, Func<Job, int, T> work, Func<string?, int, string, T> not)
    {
        var (name, findings) = ((string?)null, 0);
        try
        {
            if (JobFolder.HoldsNothing(file))
                return not(null, 1, "an empty file");
            var read = JobFile.Read(file, with.Models, with.Rates);
            (name, findings) = (read.Value?.Name, read.Findings.Count);
            if (!read.Ok)
                return not(name, findings, FindingsReport.Counts(read.Findings));
            return DesignChoice.Complaint(read.Value!, with.Request) is { } complaint ? not(name, findings, complaint) : work(read.Value!, findings);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            // What nobody foresaw in one job is said of that job.
            return not(name, findings, $"a fault of headroom itself ({fault.GetType().Name})");
        }
    }
}

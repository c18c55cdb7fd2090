using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Cli.Many;

/// <summary>Studies many jobs at once, each by itself: one that cannot be worked out does not hold up the others.</summary>
internal static class FolderStudy
{
    /// <summary>Studies every file.</summary>
    /// <param name="folder">The folder they lie in.</param>
    /// <param name="files">The job files.</param>
    /// <param name="with">The models, what is wanted and what the firm charges.</param>
    /// <param name="done">Told once for every job that is through; from any thread.</param>
    public static StudiedFolder Run(string folder, IReadOnlyList<string> files, (Catalogue Models, StudyRequest Request, FirmRates? Rates) with, Action done)
    {
        var studied = new StudiedJob[files.Count];
        Parallel.For(0, files.Count, at =>
        {
            studied[at] = Study(new StudiedJob(files[at], JobFolder.NameOf(folder, files[at])), with);
            done();
        });
        return StudiedFolder.Of(folder, with.Request.On, studied);
    }

    private static StudiedJob Study(StudiedJob job, (Catalogue Models, StudyRequest Request, FirmRates? Rates) with) => FolderJob.Work(
        job.File, with,
        (read, findings) => Told(job with { Job = read.Name, Findings = findings }, Engineering.Study.Run(read, with.Models, with.Request)),
        (name, findings, why) => job with { Job = name, Findings = findings, NotWorked = why });

    private static StudiedJob Told(StudiedJob job, Ledger ledger) => job with
    {
        Design = ledger.Design,
        Verdict = ledger.Verdict,
        Counts = [.. Enum.GetValues<Verdict>().Select(ledger.Count)],
        Worst = ledger.Entries is [var worst, ..] ? new(worst.Id, worst.What, worst.Verdict, worst.Left, worst.Unit) : null,
    };
}

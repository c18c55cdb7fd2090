using Headroom.Cli.Many;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Firms;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom papers FOLDER --only monthly-review</c>: find, read and study each job, write one review of all.</summary>
internal static class FolderReviewCommand
{
    /// <summary>The paper that there is of many jobs.</summary>
    public const string Paper = "monthly-review";

    /// <summary>The review; null when it cannot be made, which has then been said.</summary>
    public static WrittenPaper? Write(string folder, (StudyOptions Options, System.CommandLine.ParseResult Parsed) asked, (Firm? Firm, SheetSize Size) on, Desk desk)
    {
        var (options, parsed) = asked;
        if (JobFolder.Files(folder) is not { Count: > 0 } files)
        {
            desk.Err.WriteLine($"headroom: {folder} holds no job file, or more than {JobFolder.Most} YAML files; name the folder in which the jobs lie");
            return null;
        }

        var models = JobSource.Models(options.Catalogues(parsed));
        FindingsReport.Write(desk.Err, models.Findings);
        var request = FirmRecord.Add(options.Request(parsed, desk.Today), options.Readings(parsed), desk);
        var rates = options.Rates(parsed) is { } file ? FirmRatesFile.Read(file) : null;
        FindingsReport.Write(desk.Err, rates?.Findings ?? []);
        if (!models.Ok || request is null || rates is { Value: null })
            return null;
        var jobs = new ReviewedJob[files.Count];
        using (var progress = new Progress(desk.Err, files.Count, desk.SomebodyLooksOn))
        {
            Parallel.For(0, files.Count, at =>
            {
                jobs[at] = Of((files[at], JobFolder.NameOf(folder, files[at])), (models.Value!, request, rates?.Value), (on.Firm, options.Units(parsed, on.Firm)));
                progress.Done();
            });
        }

        return FolderReview.Write(jobs, (folder, request.On), on.Firm, on.Size);
    }

    private static ReviewedJob Of((string File, string Name) job, (Catalogue Models, StudyRequest Request, FirmRates? Rates) with, (Firm? Firm, Domain.Shown.ShownUnits Units) shown) => FolderJob.Work(
        job.File, with,
        (read, _) =>
        {
            var results = Study.Results(read, with.Models, with.Request);
            return ReviewedJob.Of(job.Name, new PaperInput(read, results, Study.LedgerOf(results, with.Request)) { Request = with.Request, Firm = shown.Firm, Units = shown.Units });
        },
        (_, _, why) => new(job.Name) { NotWorked = why });
}

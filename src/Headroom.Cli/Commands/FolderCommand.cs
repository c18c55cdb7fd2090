using System.CommandLine;
using Headroom.Cli.Csv;
using Headroom.Cli.Json;
using Headroom.Cli.Many;
using Headroom.Cli.Text;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom study FOLDER</c>: find, read and study each, print one line each.</summary>
internal static class FolderCommand
{
    /// <summary>Studies every job below a folder.</summary>
    public static int Run(string folder, (StudyOptions Options, ParseResult Parsed) asked, bool strict, Desk desk)
    {
        var (options, parsed) = asked;
        if (JobFolder.Files(folder) is not { } files)
        {
            desk.Err.WriteLine($"headroom: more than {JobFolder.Most} YAML files lie below {folder}; name the folder in which the jobs lie");
            return ExitCode.NotWorked;
        }

        var models = JobSource.Models(options.Catalogues(parsed));
        FindingsReport.Write(desk.Err, models.Findings);
        if (files.Count == 0)
            desk.Err.WriteLine($"headroom: there is no job.yaml in {folder} and no job file below it; name a job file, or a folder in which jobs lie");
        var request = FirmRecord.Add(options.Request(parsed, desk.Today), options.Readings(parsed), desk);
        var rates = options.Rates(parsed) is { } file ? FirmRatesFile.Read(file) : null;
        FindingsReport.Write(desk.Err, rates?.Findings ?? []);
        if (files.Count == 0 || !models.Ok || request is null || rates is { Value: null })
            return ExitCode.NotWorked;
        StudiedFolder studied;
        using (var progress = new Progress(desk.Err, files.Count, desk.SomebodyLooksOn))
            studied = FolderStudy.Run(folder, files, (models.Value!, request, rates?.Value), progress.Done);
        desk.Out.Write(options.Format(parsed) switch
        {
            "json" => FolderJson.Write(studied),
            "csv" => FolderCsv.Write(studied.Jobs),
            _ => FolderSheet.Write(studied, desk.Pen),
        });
        return studied.ExitCodeOf(strict);
    }
}

using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>Adds the firm's own readings to a study.</summary>
internal static class FirmRecord
{
    /// <summary>The request with them; null when a file cannot be read, which has then been said.</summary>
    public static StudyRequest? Add(StudyRequest request, IReadOnlyList<string> files, Desk desk)
    {
        var all = new List<FirmReading>();
        foreach (var file in files)
        {
            var read = FirmReadingFile.Read(file);
            FindingsReport.Write(desk.Err, read.Findings);
            if (!read.Ok)
                return null;
            all.AddRange(read.Value!);
        }

        return all.Count == 0 ? request : request with { FirmReadings = all };
    }
}

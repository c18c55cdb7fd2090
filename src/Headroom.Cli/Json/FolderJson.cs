using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Many;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Json;

/// <summary>Many jobs as JSON, in the order of the text.</summary>
internal static class FolderJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-jobs/1";

    /// <summary>Writes them.</summary>
    public static string Write(StudiedFolder studied) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("folder", studied.Folder);
        json.WriteString("on", studied.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteStartObject("counts");
        json.WriteNumber("jobs", studied.Jobs.Count);
        json.WriteNumber("short", studied.Count(Verdict.Short));
        json.WriteNumber("unknown", studied.Count(Verdict.Unknown));
        json.WriteNumber("tight", studied.Count(Verdict.Tight));
        json.WriteNumber("clear", studied.Count(Verdict.Clear));
        json.WriteNumber("notWorked", studied.NotWorked);
        json.WriteEndObject();
        json.Each("jobs", studied.Jobs, job => WriteJob(json, job));
    });

    private static void WriteJob(Utf8JsonWriter json, StudiedJob job)
    {
        json.WriteString("file", job.File);
        json.WriteString("name", job.Name);
        json.WriteString("job", job.Job);
        json.WriteString("design", job.Design);
        json.WriteString("verdict", job.NotWorked is null ? Words.Of(job.Verdict) : null);
        json.WriteString("notWorked", job.NotWorked);
        json.WriteNumber("findings", job.Findings);
        // What was not worked out has no counts, not counts of nothing.
        foreach (var (key, verdict) in new[] { ("short", Verdict.Short), ("unknown", Verdict.Unknown), ("tight", Verdict.Tight), ("clear", Verdict.Clear) })
            json.Number(key, job.NotWorked is null ? job.Count(verdict) : null);
        if (job.Worst is not { } worst)
        {
            json.WriteNull("worst");
            return;
        }

        json.WriteStartObject("worst");
        json.WriteString("id", worst.Id);
        json.WriteString("what", worst.What);
        json.WriteString("verdict", Words.Of(worst.Verdict));
        json.Number("left", worst.Left);
        json.WriteString("unit", worst.Unit);
        json.WriteEndObject();
    }
}

using System.Text;
using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Findings;
using Headroom.JobFiles;
using Headroom.JobFiles.Changes;
using Headroom.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Headroom.Desk.Serving;

/// <summary>The list of jobs, and how new ones begin.</summary>
internal static class JobRoutes
{
    private const int LongestName = 80;

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/", (RequestDelegate)(http => List(new Visit(http))));
        app.MapGet("/new", (RequestDelegate)(http => Ask(new Visit(http), Empty, Empty, [])));
        app.MapPost("/new", (RequestDelegate)(http => Begin(new Visit(http))));
        app.MapPost("/example", (RequestDelegate)(http => Example(new Visit(http))));
        app.MapPost("/who", (RequestDelegate)(http => Who(new Visit(http))));
        app.MapGet("/jobs/{id}/file", (RequestDelegate)(http => TakeOut(new Visit(http))));
    }

    private static IReadOnlyDictionary<string, string> Empty { get; } = new Dictionary<string, string>();

    private static Task List(Visit visit)
    {
        var sought = visit.Http.Asked("q") ?? "";
        var lines = visit.Store.Jobs().Select(job => Line(job, visit)).Where(line => Holds(line, sought)).ToList();
        return visit.Http.Page<JobsPage>(new Dictionary<string, object?>
        {
            ["Jobs"] = lines, ["Sought"] = sought, ["By"] = visit.By, ["Findings"] = visit.Http.RequestServices.GetRequiredService<ModelShelf>().Now.Findings,
        });
    }

    private static JobLine Line(StoredJob job, Visit visit)
    {
        var kept = visit.Saving.Kept(job.Id, job.Head, isLast: true);
        var changed = $"{LedgerModel.Day(DateOnly.FromDateTime(job.Changed.LocalDateTime))}, {job.By}";
        return new(job.Id, job.Name, changed, job.Head, kept is { Rows: [var worst, ..] } ? worst : null, kept?.Next ?? "", kept?.Money ?? "");
    }

    private static bool Holds(JobLine line, string sought) => sought.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word =>
        $"{line.Name} {line.Id} {line.Worst?.Subject} {line.Worst?.What} {line.Worst?.Verdict} {line.Next}".Contains(word, StringComparison.OrdinalIgnoreCase));

    private static Task Ask(Visit visit, IReadOnlyDictionary<string, string> typed, IReadOnlyDictionary<string, string> wrong, IReadOnlyList<Finding> findings)
    {
        var models = visit.Http.RequestServices.GetRequiredService<ModelShelf>().Now;
        return visit.Http.Page<NewJobPage>(
            new Dictionary<string, object?> { ["Questions"] = FirstSurvey.Questions(models.Models), ["Jobs"] = visit.Store.Jobs(), ["Typed"] = typed, ["Wrong"] = wrong, ["Findings"] = findings },
            wrong.Count + findings.Count == 0 ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task Begin(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        var typed = form.ToDictionary(field => field.Key, field => field.Value.ToString());
        var (text, what, wrong) = form["way"].ToString() switch
        {
            "copy" => Copy(visit, form["from"].ToString(), form["name"].ToString()),
            "file" => await Uploaded(form.Files, visit.Http.RequestAborted).ConfigureAwait(false),
            _ => FirstSurvey.Of(typed, visit.Http.RequestServices.GetRequiredService<ModelShelf>().Now.Models),
        };
        if (text is null)
        {
            await Ask(visit, typed, wrong, wrong.TryGetValue("", out var whole) ? [Refused(whole)] : []).ConfigureAwait(false);
            return;
        }

        var (id, findings) = visit.Saving.Add(text, visit.By, what);
        await (id is null ? Ask(visit, typed, Empty, findings) : visit.Http.GoOn($"/jobs/{id}")).ConfigureAwait(false);
    }

    private static (JobText? Text, string What, IReadOnlyDictionary<string, string> Wrong) Copy(Visit visit, string from, string name)
    {
        if (visit.Store.Find(from) is not { } job || visit.Store.Read(from) is not { } text)
            return (null, "", new Dictionary<string, string> { [""] = "the job that was to be copied is not there" });
        var named = FieldText.Of(name);
        if (named.Value is null)
            return (null, "", new Dictionary<string, string> { [""] = "the new job has no name" });
        var edit = JobFieldEditor.Put(text.Text, [new(["job"], null, named.Value)]);
        return edit.Text is null
            ? (null, "", new Dictionary<string, string> { [""] = "the name cannot be written in that job file" })
            : (text.With(edit.Text), $"a copy of {job.Name}, revision {job.Head}", Empty);
    }

    private static async Task<(JobText? Text, string What, IReadOnlyDictionary<string, string> Wrong)> Uploaded(IFormFileCollection files, CancellationToken stop)
    {
        var read = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        foreach (var file in files.Where(file => file.Length > 0))
        {
            using var bytes = new MemoryStream();
            await file.CopyToAsync(bytes, stop).ConfigureAwait(false);
            read[Path.GetFileName(file.FileName.Replace('\\', '/'))] = bytes.ToArray();
        }

        var jobs = read.Where(file => file.Key.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || file.Key.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)).ToList();
        if (jobs is not [var job])
            return (null, "", new Dictionary<string, string> { [""] = jobs.Count == 0 ? "there is no job file (.yaml) among the files" : "there are several job files; send one at a time" });
        var text = new JobText(job.Value, JobText.NoFiles);
        var sheets = JobFile.SheetsOf(text.Text).ToDictionary(name => name.Replace('\\', '/'), name => Path.GetFileName(name.Replace('\\', '/')));
        var missing = sheets.Where(sheet => !read.ContainsKey(sheet.Value)).Select(sheet => sheet.Key).ToList();
        if (missing.Count > 0)
            return (null, "", new Dictionary<string, string> { [""] = $"the job names {string.Join(", ", missing)}, and that is not among the files; send it with the job" });
        return (text with { Files = sheets.ToDictionary(sheet => sheet.Key, sheet => read[sheet.Value]) }, $"taken over from {job.Key}", Empty);
    }

    private static Task Example(Visit visit)
    {
        using var stream = typeof(JobRoutes).Assembly.GetManifestResourceStream("example.yaml")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var (id, findings) = visit.Saving.Add(JobText.Of(reader.ReadToEnd()), visit.By, "the example");
        return id is null ? visit.Http.Refuse(StatusCodes.Status422UnprocessableEntity, "The example does not hold together with the models of this desk.", "See whether the firm's own models take something away.", findings) : visit.Http.GoOn($"/jobs/{id}");
    }

    private static async Task Who(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        var name = form["by"].ToString().Trim();
        if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
        {
            await visit.Http.Refuse(StatusCodes.Status422UnprocessableEntity, $"A name has 1 to {LongestName} letters.", "Go back and write it again.").ConfigureAwait(false);
            return;
        }

        visit.KeepName(name);
        await visit.Http.GoOn("/").ConfigureAwait(false);
    }

    private static async Task TakeOut(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is { } open)
            await visit.Http.Send($"{open.Stored.Id}.yaml", "application/octet-stream", open.Text.Bytes).ConfigureAwait(false);
    }

    private static Finding Refused(string what) => new(Severity.Error, "DESK", Place.None, what, "one job that can be read", "see above and try again");
}

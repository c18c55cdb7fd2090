using Headroom.Cli.Text;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary>Says which design is meant, or why none is.</summary>
internal static class DesignChoice
{
    /// <summary>What is wrong with what is asked for; null when nothing.</summary>
    public static string? Complaint(Job job, StudyRequest request) =>
        Complaint(job, request.Design) ?? ComplaintOfCounts(job, request);

    private static string? ComplaintOfCounts(Job job, StudyRequest request)
    {
        var design = request.Design ?? job.Chosen ?? (job.Designs is [var only] ? only.Id : null);
        if (design is null || DesignLineage.Whole(job, design) is not { } whole)
            return null;
        var switches = whole.Switches.Select(unit => unit.Id).ToList();
        return request.Counts.Select(count => count.Switch).FirstOrDefault(name => name is not null && !switches.Contains(name)) is { } unknown
            ? $"--count: design {design} has no switch '{unknown}'{Near(unknown, switches)}; it has {Listed(switches)}"
            : null;
    }

    private static string? Complaint(Job job, string? asked)
    {
        var ids = job.Designs.Select(design => design.Id).ToList();
        if (asked is not null && !ids.Contains(asked))
            return $"the job has no design '{asked}'{Near(asked, ids)}; it has {Listed(ids)}";
        return asked is null && job.Chosen is null && ids.Count > 1
            ? $"the job has several designs and none is chosen: add --design {Words.Or(ids)}, or 'chosen: {ids[0]}' to the job"
            : null;
    }

    private static string Near(string word, List<string> ids) => Spelling.Nearest(word, ids) is { } near ? $"; did you mean {near}?" : "";

    private static string Listed(List<string> ids) => ids.Count == 0 ? "none" : string.Join(", ", ids);
}

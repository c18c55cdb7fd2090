using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary>Sees whether the design and the switches that the options name are there.</summary>
internal static class DesignChoice
{
    /// <summary>What is wrong with what is asked for; null when nothing.</summary>
    public static string? Complaint(Job job, StudyRequest request)
    {
        var ids = job.Designs.Select(design => design.Id).ToList();
        if (ids.Count == 0)
            return "the job has no design yet; write one below 'designs:'";
        if (request.Design is { } asked && !ids.Contains(asked))
            return $"the job has no design '{asked}'{Near(asked, ids)}; it has {string.Join(", ", ids)}";
        return Study.DesignOf(job, request.Design) is { } design ? ComplaintOfCounts(design, request.Counts) : null;
    }

    private static string? ComplaintOfCounts(Design design, IReadOnlyList<CountAs> counts)
    {
        var switches = design.Switches.Select(unit => unit.Id).ToList();
        var unknown = counts.Select(count => count.Switch).FirstOrDefault(name => name is not null && !switches.Contains(name));
        return unknown is null
            ? null
            : $"--count names '{unknown}'{Near(unknown, switches)}; design {design.Id} has {(switches.Count == 0 ? "no switch" : string.Join(", ", switches))}";
    }

    private static string Near(string word, List<string> ids) => Spelling.Nearest(word, ids) is { } near ? $"; did you mean {near}?" : "";
}

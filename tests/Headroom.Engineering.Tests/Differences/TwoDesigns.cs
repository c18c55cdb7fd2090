using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Differences;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Differences;

/// <summary>A small made-up job with a first design and a second one that is like it.</summary>
internal static class TwoDesigns
{
    public static Catalogue Models { get; } = CatalogueFiles.ReadShipped().Value!;

    /// <summary>The job, with what the second design says differently.</summary>
    public static Job Job(string second = "switches: {sw-1: {model: redshank}}")
    {
        var read = JobFile.Parse($$$"""
            headroom: 1
            job: Two designs
            survey:
              spaces: {closet: {kind: cupboard}, hall: {kind: open office}}
              drops:
                K-1..K-3: {from: closet, to: hall, length: 40 m, cable: cat6-23, ambient: 25 °C}
              endpoints:
                ap-1: {model: bulrush, drop: K-1}
                ap-2: {model: bulrush, drop: K-2}
                phone-1: {model: pipit, drop: K-3}
            chosen: first
            designs:
              first:
                switches: {sw-1: {model: wren-b, in: closet, level: 1}}
                patch: {K-1..K-3: sw-1/1..3}
              second:
                like: first
                {{{second}}}
            """, "job.yaml", Models);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    }

    public static Design Design(Job job, string id) => DesignLineage.Whole(job, id)!;

    public static Ledger Study(Job job, string? design) => Headroom.Engineering.Study.Run(job, Models, new StudyRequest(design, new DateOnly(2026, 11, 25), [], null));

    public static IReadOnlyList<string> Told(string second)
    {
        var job = Job(second);
        return [.. DesignDifferences.Of(Design(job, "first"), Design(job, "second")).Select(difference => $"{difference.Subject}: {difference.Text}")];
    }
}

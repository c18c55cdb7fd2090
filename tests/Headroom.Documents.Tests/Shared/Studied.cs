using Headroom.Documents.Papers;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Documents.Tests;

/// <summary>Shipped examples, studied.</summary>
internal static class Studied
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    /// <summary>An example as papers see it.</summary>
    public static PaperInput Example(string name, string? design = null)
    {
        var catalogue = CatalogueFiles.ReadShipped().Value!;
        var job = JobFile.Read(Path.Combine(Repository.Root, "examples", name, "job.yaml"), catalogue).Value!;
        var request = new StudyRequest(design, Day, [], null);
        return new PaperInput(job, Study.Results(job, catalogue, request), Study.Run(job, catalogue, request));
    }
}

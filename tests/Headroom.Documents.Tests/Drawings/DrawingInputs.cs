using Headroom.Documents.Papers;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Documents.Tests.Drawings;

/// <summary>Studied jobs for drawings, each read once.</summary>
internal static class DrawingInputs
{
    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, Lazy<PaperInput>> Read = [];

    public static PaperInput Of(string name) => Read.GetOrAdd(name, _ => new Lazy<PaperInput>(() => name == "two-desks" ? Own("room-job.yaml")
        : name == "warm-shop" ? Own("air-job.yaml")
        : name == "strange-names" ? StrangeNames.Input
        : name == "planned" ? PlannedDrawings.Of(Studied.Example("barn-vets"))
        : name.Split('/') is [var example, var design] ? Studied.Example(example, design) : Studied.Example(name))).Value;

    private static PaperInput Own(string file)
    {
        var catalogue = CatalogueFiles.ReadShipped().Value!;
        var read = JobFile.Read(Path.Combine(Repository.Root, "tests", "Headroom.Documents.Tests", "Drawings", file), catalogue);
        Assert.True(read.Ok, string.Join("; ", read.Findings.Select(finding => finding.ToString())));
        var request = new StudyRequest(null, new DateOnly(2026, 11, 25), [], null);
        return new PaperInput(read.Value!, Study.Results(read.Value!, catalogue, request), Study.Run(read.Value!, catalogue, request));
    }
}

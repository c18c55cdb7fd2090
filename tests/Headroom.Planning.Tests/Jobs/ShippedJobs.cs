using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.JobFiles;

namespace Headroom.Planning.Tests.Jobs;

internal static class ShippedJobs
{
    public static readonly DateOnly Day = new(2026, 11, 25);

    private static readonly Lazy<Catalogue> Shipped = new(() => CatalogueFiles.ReadShipped().Value!);

    public static Catalogue Catalogue => Shipped.Value;

    public static Job Of(string example) => JobFile.Read(Repository.PathOf($"examples/{example}/job.yaml"), Catalogue).Value!;

    public static Job Text(string yaml)
    {
        var read = JobFile.Parse(yaml, "job.yaml", Catalogue);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    }
}

using System.Globalization;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.Engineering;
using Headroom.Engineering.Remedies;
using Headroom.JobFiles;

namespace Headroom.Bench;

/// <summary>Measures how long it takes to find remedies for the short example.</summary>
internal static class RemedyBench
{
    private const int Studies = 200;
    private const double BarSeconds = 2;

    /// <summary>Adds the table and the bar.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue)
    {
        var job = JobFile.Read(Path.Combine(FiguresPage.Root, "examples", "barn-vets", "job.yaml"), catalogue).Value ?? throw new InvalidOperationException("The example does not read.");
        var request = new RemedyRequest(new StudyRequest("as-offered", new DateOnly(2026, 11, 25), [], null), []);
        var result = RemedySearch.Find(job, catalogue, request);
        var seconds = Timing.Median(() => RemedySearch.Find(job, catalogue, request), 20) / 1000;
        var scaled = seconds * Studies / result.Studied;
        text.Append("## Remedies of examples/barn-vets, each change studied with the whole ledger\n\n| changes studied | s | ms each | s for 200 |\n| ---: | ---: | ---: | ---: |\n");
        text.Append(CultureInfo.InvariantCulture, $"| {result.Studied} | {seconds:0.000} | {1000 * seconds / result.Studied:0.00} | {scaled:0.00} |\n\n");
        bars.Add(("remedies, for 200 changes studied", scaled, BarSeconds, "s"));
    }
}

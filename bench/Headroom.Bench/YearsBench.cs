using System.Globalization;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.Engineering;
using Headroom.Engineering.Years;
using Headroom.JobFiles;

namespace Headroom.Bench;

/// <summary>Measures how long the years of a site take: a study of a changed copy for each, and some more to tell the month and the cause.</summary>
internal static class YearsBench
{
    private const int Until = 7;

    // Nobody waits for it: a study of each year, of months where something turns, and of each cause alone.
    private const double BarMilliseconds = 500;

    /// <summary>Adds the table and the bar.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue)
    {
        var file = Path.Combine(FiguresPage.Root, "examples", "school-wings", "job.yaml");
        var job = JobFile.Parse(File.ReadAllText(file), file, catalogue).Value ?? throw new InvalidOperationException("The school does not read.");
        var request = StudyRequest.Whole(new DateOnly(2026, 11, 25));
        var one = Timing.Median(() => Study.Run(job, catalogue, request), 40);
        var all = Timing.Median(() => YearsStudy.Of(job, catalogue, request, Until), 15);
        text.Append(CultureInfo.InvariantCulture, $"## Seven years of the school of {job.Survey.Endpoints.Count} endpoints, job in memory\n\n| what | ms | ratio |\n| --- | ---: | ---: |\n");
        text.Append(CultureInfo.InvariantCulture, $"| one study with every discipline | {one:0.0} | 1 |\n| {Until} years, with months and causes | {all:0.0} | {all / one:0} |\n\n");
        bars.Add(($"{Until} years of {job.Survey.Endpoints.Count} endpoints", all, BarMilliseconds, "ms"));
    }
}

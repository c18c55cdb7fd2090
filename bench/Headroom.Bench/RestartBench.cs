using System.Globalization;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;
using Headroom.Engineering.Standby;
using Headroom.JobFiles;

namespace Headroom.Bench;

/// <summary>Measures how long playing through a restart takes.</summary>
internal static class RestartBench
{
    private const int Endpoints = 300;
    private const double BarMilliseconds = 50;

    /// <summary>Adds the table and the bar.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue)
    {
        text.Append("## Restart after an outage, job bound and power worked out\n\n| endpoints | ms | bytes each |\n| ---: | ---: | ---: |\n");
        foreach (var size in new[] { Endpoints, 20_000 })
        {
            var job = JobFile.Parse(SyntheticSite.Yaml(size), "job.yaml", catalogue).Value ?? throw new InvalidOperationException("The made-up site does not read.");
            var bound = Binder.Bind(job, catalogue, DesignLineage.Whole(job, job.Designs[0].Id)!, []);
            var power = PowerStudy.Of(bound);
            void Run() => RestartStudy.Of(bound, power);
            var milliseconds = Timing.Median(Run, 40);
            text.Append(CultureInfo.InvariantCulture, $"| {size} | {milliseconds:0.00} | {(double)Timing.Allocated(Run) / size:0} |\n");
            if (size == Endpoints)
                bars.Add(($"restart of {Endpoints} endpoints", milliseconds, BarMilliseconds, "ms"));
        }

        text.Append('\n');
    }
}

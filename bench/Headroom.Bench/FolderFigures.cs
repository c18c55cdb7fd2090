using System.Diagnostics;
using System.Globalization;

namespace Headroom.Bench;

/// <summary>Measures how long a folder of many jobs takes, from start to end of the command.</summary>
internal static class FolderFigures
{
    private const int Jobs = 1000;
    private const int Endpoints = 100;

    /// <summary>The rows of the page, and the figure that the bar is about [s].</summary>
    public static (string Rows, double Seconds) Measure(Func<string[], ProcessStartInfo> headroom)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-bench-jobs").FullName;
        try
        {
            for (var job = 0; job < Jobs; job++)
            {
                var own = Directory.CreateDirectory(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"job-{job:0000}")));
                File.WriteAllText(Path.Combine(own.FullName, "job.yaml"), SyntheticSite.Yaml(Endpoints, job));
            }

            // Ends with 1: something is short in a site that nobody designed.
            var all = Timing.Process(headroom(["study", folder]), 3, mostExitCode: 1) / 1000;
            var one = Timing.Process(headroom(["study", Path.Combine(folder, "job-0000")]), 5, mostExitCode: 1) / 1000;
            return (string.Create(CultureInfo.InvariantCulture, $"| one of them by itself | {one:0.00} | |\n| all {Jobs}, on {Environment.ProcessorCount} cores | {all:0.00} | {all * 1000 / Jobs:0.0} |\n"), all);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}

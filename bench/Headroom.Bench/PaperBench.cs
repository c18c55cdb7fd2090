using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Headroom.Bench;

/// <summary>Measures all papers of the examples, each in a process of its own from its start to its end.</summary>
internal static class PaperBench
{
    private const int Times = 5;
    private const double BytesPerMegabyte = 1e6;

    /// <summary>Adds the rows and bars.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Func<string[], ProcessStartInfo> headroom)
    {
        text.Append("## All papers and all drawings of a job, process from start to end\n\n| what | s | of a processor, s | most memory, MB |\n| --- | ---: | ---: | ---: |\n");
        (double Seconds, double Processor, double Megabytes) Row(string what, string command, string example)
        {
            var row = Run(headroom, command, example);
            text.Append(string.Create(CultureInfo.InvariantCulture, $"| {what} | {row.Seconds:0.00} | {row.Processor:0.00} | {row.Megabytes:0} |\n"));
            return row;
        }

        var small = Row("papers of barn-vets, 26 drops", "papers", "barn-vets");
        var large = Row("papers of school-wings, 300 endpoints", "papers", "school-wings");
        Row("drawings of school-wings, without those of the planner", "draw", "school-wings");
        text.Append('\n');
        bars.Add(("all papers of the example of 30 drops", small.Seconds, 4, "s"));
        bars.Add(("all papers of the example of 300 endpoints", large.Seconds, 15, "s"));
        bars.Add(("memory for all papers of the example of 300 endpoints", large.Megabytes, 400, "MB"));
    }

    private static (double Seconds, double Processor, double Megabytes) Run(Func<string[], ProcessStartInfo> headroom, string command, string example)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-bench-papers").FullName;
        var (seconds, processor, most) = (new double[Times], new double[Times], 0.0);
        try
        {
            for (var i = 0; i < Times; i++)
            {
                var watch = Stopwatch.StartNew();
                var (code, worked, bytes) = Once(headroom([command, Path.Combine(FiguresPage.Root, "examples", example, "job.yaml"), "--out", Path.Combine(folder, i.ToString(CultureInfo.InvariantCulture))]));
                if (code != 0)
                    throw new InvalidOperationException($"{command} of {example} ended with {code}: a figure of a failure is worth nothing.");
                seconds[i] = watch.Elapsed.TotalSeconds;
                processor[i] = worked.TotalSeconds;
                most = Math.Max(most, bytes / BytesPerMegabyte);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        Array.Sort(seconds);
        Array.Sort(processor);
        return (seconds[Times / 2], processor[Times / 2], most);
    }

    // Memory and processor are asked for while it runs: when a process has ended, nobody tells any more.
    private static (int Code, TimeSpan Worked, long Bytes) Once(ProcessStartInfo start)
    {
        using var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        var (worked, most) = (TimeSpan.Zero, 0L);
        while (!process.WaitForExit(20))
        {
            process.Refresh();
            if (Told(process) is not { } now)
                continue;
            (worked, most) = (now.Worked, Math.Max(most, now.Bytes));
        }

        process.WaitForExit();
        return (process.ExitCode, worked, most);
    }

    private static (TimeSpan Worked, long Bytes)? Told(Process process)
    {
        try
        {
            return (process.TotalProcessorTime, process.PeakWorkingSet64);
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}

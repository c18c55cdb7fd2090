using System.Diagnostics;

namespace Headroom.Bench;

/// <summary>Times things: the median of many runs after a warm-up.</summary>
internal static class Timing
{
    private const int WarmMilliseconds = 800;

    /// <summary>Median milliseconds of one run.</summary>
    public static double Median(Action run, int times)
    {
        // Until the code has been compiled for speed: first figures of a run would otherwise be of the code as it starts.
        var warm = Stopwatch.StartNew();
        for (var i = 0; i < 3 || warm.ElapsedMilliseconds < WarmMilliseconds; i++)
            run();
        var samples = new double[times];
        for (var i = 0; i < times; i++)
        {
            var watch = Stopwatch.StartNew();
            run();
            samples[i] = watch.Elapsed.TotalMilliseconds;
        }

        Array.Sort(samples);
        return samples[times / 2];
    }

    /// <summary>Median milliseconds of one run, in batches that do the same work whatever the size of one: each pays its share of tidying up memory.</summary>
    public static double OfBatches(Action run, int each, int times) => Median(() =>
    {
        for (var i = 0; i < each; i++)
            run();
    }, times) / each;

    /// <summary>Bytes that one run allocates, on all threads.</summary>
    public static long Allocated(Action run)
    {
        run();
        var before = GC.GetTotalAllocatedBytes(precise: true);
        run();
        return GC.GetTotalAllocatedBytes(precise: true) - before;
    }

    /// <summary>Milliseconds of a process from start to end, two programs in turn; medians of both.</summary>
    public static (double First, double Second) Processes(ProcessStartInfo first, ProcessStartInfo second, int times)
    {
        var samples = (First: new double[times], Second: new double[times]);
        Once(first);
        Once(second);
        for (var i = 0; i < times; i++)
        {
            samples.First[i] = Once(first);
            samples.Second[i] = Once(second);
        }

        Array.Sort(samples.First);
        Array.Sort(samples.Second);
        return (samples.First[times / 2], samples.Second[times / 2]);
    }

    /// <summary>Median milliseconds of a process from start to end.</summary>
    public static double Process(ProcessStartInfo start, int times, int mostExitCode)
    {
        Once(start, mostExitCode);
        var samples = new double[times];
        for (var i = 0; i < times; i++)
            samples[i] = Once(start, mostExitCode);
        Array.Sort(samples);
        return samples[times / 2];
    }

    private static double Once(ProcessStartInfo start, int mostExitCode = 0)
    {
        var watch = Stopwatch.StartNew();
        using var process = System.Diagnostics.Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode > mostExitCode)
            throw new InvalidOperationException($"{start.FileName} ended with {process.ExitCode}: a figure of a failure is worth nothing.");
        return watch.Elapsed.TotalMilliseconds;
    }
}

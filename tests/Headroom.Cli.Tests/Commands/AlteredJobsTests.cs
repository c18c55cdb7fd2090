using System.Text;

namespace Headroom.Cli.Tests.Commands;

/// <summary>People alter a job by the line: one out, one twice, a word or figure from elsewhere. Whatever still reads must be worked out and explained, never end in a fault.</summary>
public sealed class AlteredJobsTests
{
    private static readonly string[] Words = ["none", "unknown", "?", "0 m", "0.1 m", "2000 m", "wren-b", "alder", "moth", "bulrush", "rook", "token", "sw-1", "cupboard", "30 °C", "1 W", "yes", "class", "measured", "cord-26"];

    [Fact]
    public void A_job_that_reads_is_studied_and_explained()
    {
        var faults = new List<string>();
        var worked = 0;
        Parallel.For(0, Long.Samples(3000), number =>
        {
            var text = Alter(new Random(number));
            var result = TestDesk.Run(["study", "-", "--all"], text);
            if (result.ExitCode != 2)
                Interlocked.Increment(ref worked);
            if (result.Err.Contains("fault of headroom", StringComparison.Ordinal))
                Note(faults, $"study of sample {number}: {result.Err}\n{text}");
            if (result.ExitCode == 2 || number % 10 != 0)
                return;
            var explained = TestDesk.Run(["explain", "-", "power", "cabling", "sound", "standby", "traffic", "failure", "reliability"], text);
            if (explained.Err.Contains("fault of headroom", StringComparison.Ordinal))
                Note(faults, $"explaining sample {number}: {explained.Err}\n{text}");
        });
        Assert.True(faults.Count == 0, string.Join("\n\n", faults.Take(3)));
        // If hardly any alteration reads, nothing was proved.
        Assert.True(worked > Long.Samples(3000) / 8, $"only {worked} were worked out");
    }

    private static void Note(List<string> faults, string fault)
    {
        lock (faults)
            faults.Add(fault);
    }

    private static string Alter(Random random)
    {
        var example = random.Next(4) == 0 ? "one-desk" : "barn-vets";
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "examples", example, "job.yaml")).ToList();
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            var at = random.Next(lines.Count);
            switch (random.Next(4))
            {
                case 0 or 1:
                    lines.RemoveAt(at);
                    break;
                case 2:
                    lines[at] = Swap(lines[at], random);
                    break;
                default:
                    lines.Insert(at, lines[random.Next(lines.Count)]);
                    break;
            }
        }

        return new StringBuilder().AppendJoin('\n', lines).Append('\n').ToString();
    }

    // Puts another value behind one of the colons of a line.
    private static string Swap(string line, Random random)
    {
        var parts = line.Split(": ");
        if (parts.Length < 2)
            return line;
        var at = random.Next(1, parts.Length);
        var end = parts[at].AsSpan().IndexOfAny(",}]");
        parts[at] = Words[random.Next(Words.Length)] + (end < 0 ? "" : parts[at][end..]);
        return string.Join(": ", parts);
    }
}

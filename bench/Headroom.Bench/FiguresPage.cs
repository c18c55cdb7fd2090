using System.Diagnostics;
using System.Globalization;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Bench;

/// <summary>Measures what the bars are set on, and writes the page of figures.</summary>
internal static class FiguresPage
{
    private static readonly int[] Sizes = [20, 200, 2_000, 20_000];

    /// <summary>The folder of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Measures everything, or only the parts that are named.</summary>
    public static (string Text, bool BarsKept) Make(IReadOnlyList<string> only)
    {
        var catalogue = CatalogueFiles.ReadShipped().Value ?? throw new InvalidOperationException("The shipped catalogue does not read.");
        var bars = new List<(string What, double Figure, double Bar, string Unit)>();
        var text = new StringBuilder(Heading);
        foreach (var (part, measure) in new (string, Action)[]
        {
            ("power", () => Studies(text, bars, catalogue, "power")),
            ("cabling", () => Studies(text, bars, catalogue, "cabling")),
            ("whole", () => Whole(text, bars, catalogue)),
            ("restart", () => RestartBench.Measure(text, bars, catalogue)),
            ("years", () => YearsBench.Measure(text, bars, catalogue)),
            ("sound", () => SoundMesh.Measure(text, bars, catalogue)),
            ("remedies", () => RemedyBench.Measure(text, bars, catalogue)),
            ("planner", () => PlannerBench.Measure(text, bars, catalogue)),
            ("reading", () => Reading(text, catalogue)),
            ("start", () => Start(text, bars)),
            ("folder", () => Folder(text, bars)),
            ("papers", () => PaperBench.Measure(text, bars, arguments => Dotnet(Environment.GetEnvironmentVariable("HEADROOM_EXE") ?? Latest("headroom.dll"), arguments))),
            ("serve", () => ServeBench.Measure(text, bars, arguments => Dotnet(Environment.GetEnvironmentVariable("HEADROOM_EXE") ?? Latest("headroom.dll"), arguments))),
        })
        {
            if (only.Count == 0 || only.Contains(part))
                measure();
        }

        text.Append("## Bars\n\n| bar | at most | here | kept |\n| --- | ---: | ---: | --- |\n");
        foreach (var (what, figure, bar, unit) in bars)
            Line(text, $"| {what} | {bar:0.##} {unit} | {figure:0.##} {unit} | {(figure <= bar ? "yes" : "no")} |");
        return (text.ToString(), bars.TrueForAll(bar => bar.Figure <= bar.Bar));
    }

    private const string Heading = """
        # Figures

        How fast it is, measured by `dotnet run -c Release --project bench/Headroom.Bench -- --write`. Times swing with the machine and
        with what else runs on it: read the ratios, each taken within one run. The site is made up: 20 endpoints to a switch, every
        one with a drop, patched, four entries of power each and two of cabling. Memory is set up as `./headroom` sets it up. Studies
        are timed in batches of the same work, so that small ones bear their share of tidying up memory as large ones do.


        """;

    private static void Studies(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue, string discipline)
    {
        var title = discipline == "power" ? "Power study, job in memory to sorted ledger" : "Cabling study, the currents of power worked out for it";
        text.Append("## ").Append(title).Append("\n\n| endpoints | ms | µs each | ratio to ten times fewer | bytes each |\n| ---: | ---: | ---: | ---: | ---: |\n");
        double? before = null;
        foreach (var size in Sizes)
        {
            var job = Parse(SyntheticSite.Yaml(size), catalogue);
            void Run() => Study.Run(job, catalogue, new StudyRequest(null, new DateOnly(2026, 11, 25), [], [discipline]));
            var milliseconds = Timing.OfBatches(Run, Sizes[^1] / size, 21);
            var bytes = (double)Timing.Allocated(Run) / size;
            Line(text, $"| {size} | {milliseconds:0.00} | {milliseconds * 1000 / size:0.0} | {(before is { } b ? (milliseconds / b).ToString("0.0", CultureInfo.InvariantCulture) : "")} | {bytes:0} |");
            if (size == 20_000 && discipline == "power")
            {
                bars.Add(("growth of the study from 2 000 to 20 000 endpoints", milliseconds / before!.Value, 12, "x"));
                bars.Add(("allocated by the study of 20 000 endpoints, each", bytes, 4096, "bytes"));
            }

            before = milliseconds;
        }

        text.Append('\n');
    }

    // As a page or an editor that stays open asks for it, again and again.
    private static void Whole(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue)
    {
        text.Append("## Study with every discipline, warm\n\n| what | ms |\n| --- | ---: |\n");
        double Row(string what, Job job, int each)
        {
            var milliseconds = Timing.OfBatches(() => Study.Run(job, catalogue, StudyRequest.Whole(new DateOnly(2026, 11, 25))), each, 11);
            Line(text, $"| {what} | {milliseconds:0.00} |");
            return milliseconds;
        }

        var small = Row("200 endpoints", Parse(SyntheticSite.Yaml(200), catalogue), 100);
        var school = Row("the shipped example of 300 endpoints", JobFile.Read(Path.Combine(Root, "examples", "school-wings", "job.yaml"), catalogue).Value!, 60);
        var middle = Row("2 000 endpoints", Parse(SyntheticSite.Yaml(2_000), catalogue), 10);
        var large = Row("20 000 endpoints", Parse(SyntheticSite.Yaml(20_000), catalogue), 1);
        Line(text, $"\nThe disciplines are {string.Join(", ", Study.Disciplines)}.\n");
        bars.Add(("warm study of 200 endpoints with every discipline (0.25 is aimed at)", small, 1, "ms"));
        bars.Add(("the example of 300 endpoints with every discipline", school, 5, "ms"));
        bars.Add(("20 000 endpoints with every discipline", large, 600, "ms"));
        bars.Add(("growth with every discipline from 2 000 to 20 000 endpoints", large / middle, 12, "x"));
    }

    private static void Reading(StringBuilder text, Catalogue catalogue)
    {
        text.Append("## Reading files\n\n| what | ms | ratio to reading its bytes as text |\n| --- | ---: | ---: |\n");
        foreach (var size in Sizes)
        {
            var yaml = SyntheticSite.Yaml(size);
            var bytes = Encoding.UTF8.GetBytes(yaml);
            var naive = Timing.Median(() => _ = Encoding.UTF8.GetString(bytes).Split((char)10), 40);
            var read = Timing.Median(() => Parse(yaml, catalogue), size >= 20_000 ? 5 : 20);
            Line(text, $"| job file of {size} endpoints, {bytes.Length / 1000.0:0} kB, with all checks | {read:0.0} | {read / naive:0} |");
        }

        var whole = Timing.Median(() => CatalogueFiles.ReadShipped(), 10);
        Line(text, $"| the shipped catalogue, as a command opens it | {whole:0.0} | |");
        text.Append('\n');
    }

    private static void Start(StringBuilder text, List<(string, double, double, string)> bars)
    {
        var file = Path.Combine(Path.GetTempPath(), "headroom-bench-job.yaml");
        File.WriteAllText(file, SyntheticSite.Yaml(97));
        var lines = File.ReadAllLines(file).Length;
        var headroom = Environment.GetEnvironmentVariable("HEADROOM_EXE") ?? Latest("headroom.dll");
        var bare = Path.Combine(Root, "artifacts", "bin", "Headroom.Bare", "release", "Headroom.Bare.dll");
        var (check, nothing) = Timing.Processes(Dotnet(headroom, "check", file), Dotnet(bare), 21);
        text.Append("## Cold start, process from start to end, in turn\n\n| what | ms | ratio |\n| --- | ---: | ---: |\n");
        Line(text, $"| a bare .NET console program that prints a word | {nothing:0} | 1 |");
        Line(text, $"| `headroom check` of a job file of {lines} lines | {check:0} | {check / nothing:0.00} |");
        text.Append('\n');
        bars.Add(($"`check` of a {lines}-line file against a bare console program", check / nothing, 2.5, "x"));
        File.Delete(file);
    }

    private static void Folder(StringBuilder text, List<(string, double, double, string)> bars)
    {
        var headroom = Environment.GetEnvironmentVariable("HEADROOM_EXE") ?? Latest("headroom.dll");
        var (rows, seconds) = FolderFigures.Measure(arguments => Dotnet(headroom, arguments));
        text.Append("## A folder of 1 000 jobs of 100 endpoints, `headroom study FOLDER` from start to end\n\n| what | s | ms each |\n| --- | ---: | ---: |\n").Append(rows).Append('\n');
        bars.Add(("`study` of a folder of 1 000 jobs of 100 endpoints", seconds, 10, "s"));
    }

    private static ProcessStartInfo Dotnet(string assembly, params string[] arguments)
    {
        var quick = Path.ChangeExtension(assembly, ".quick.runtimeconfig.json");
        string[] how = arguments is ["check" or "study" or "explain" or "reckon", ..] && File.Exists(quick) ? ["exec", "--runtimeconfig", quick] : [];
        var start = new ProcessStartInfo("dotnet", [.. how, assembly, .. arguments]) { RedirectStandardOutput = true };
        // As ./headroom starts it (docs/decisions/0004-starting-soon.md); the bare program starts as any program does.
        foreach (var (name, value) in AsTheCommand.Settings)
        {
            if (Path.GetFileName(assembly) == "headroom.dll")
                start.Environment[name] = value;
            else
                start.Environment.Remove(name);
        }

        return start;
    }

    private static string Latest(string name) => Directory.EnumerateFiles(Path.Combine(Root, "artifacts", "run"), name, SearchOption.AllDirectories)
        .Where(path => Path.GetFileName(Path.GetDirectoryName(path))!.StartsWith("build-", StringComparison.Ordinal))
        .OrderByDescending(File.GetLastWriteTimeUtc).FirstOrDefault()
        ?? throw new InvalidOperationException("Start ./headroom once, so that there is a build to measure.");

    private static Job Parse(string yaml, Catalogue catalogue)
    {
        var loaded = JobFile.Parse(yaml, "job.yaml", catalogue);
        return loaded.Ok ? loaded.Value! : throw new InvalidOperationException(string.Join('\n', loaded.Findings));
    }

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Headroom.slnx")))
            folder = Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar));
        return folder ?? throw new InvalidOperationException("No Headroom.slnx above the program.");
    }
}

using System.Diagnostics;
using System.Globalization;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.JobFiles;
using Headroom.Planning;
using Headroom.Planning.Packing;
using Headroom.Planning.Tests.Packing;

namespace Headroom.Bench;

/// <summary>Measures the planner: known instances, the shipped examples, an invented campus beside a plain integer programme.</summary>
internal static class PlannerBench
{
    private const int Endpoints = 2_000;
    private const int Places = 40;
    private const double PlainSeconds = 20;
    private const int WarmRuns = 4;

    private static readonly string[] Small = ["V1", "V2", "V3", "V4", "V5", "V6a", "V6b", "V6c", "V7", "V8"];

    /// <summary>Adds the tables and the bars.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue)
    {
        text.Append("## Planner, one worker, seconds of the processor it ran on\n\n| instance | cost | proved | s |\n| --- | ---: | --- | ---: |\n");
        bars.Add(("slowest of V1 to V8, proved", Small.Max(name => Known(text, name, Instances.Named(name))), 1, "s"));
        bars.Add(("t60_00, proved", Known(text, "t60_00", Instances.Parse(Instances.T60, int.MaxValue)), 5, "s"));
        bars.Add(("u120_00, proved", Known(text, "u120_00", Instances.Parse(Instances.U120, int.MaxValue)), 5, "s"));
        text.Append("\n| example, warm | first design, s | cheapest proved or bounded, s | all options, s | designs studied |\n| --- | ---: | ---: | ---: | ---: |\n");
        foreach (var name in new[] { "one-desk", "print-shop", "barn-vets" })
            Example(text, name, catalogue);
        var (first, all) = Example(text, "school-wings", catalogue);
        bars.Add(("first design for the example of 300 endpoints, warm", first, 0.5, "s"));
        bars.Add(("all options for the example of 300 endpoints", all, 20, "s"));
        Campuses(text, bars);
    }

    private static double Known(StringBuilder text, string name, PackProblem problem)
    {
        Packer.Solve(problem, PackEffort.Usual);
        var (packed, seconds) = Timed(() => Packer.Solve(problem, PackEffort.Usual));
        Line(text, $"| {name} | {packed.Cost} | {(packed.Proved ? "yes" : "no")} | {seconds:0.00} |");
        return packed.Proved ? seconds : double.PositiveInfinity;
    }

    private static (double First, double All) Example(StringBuilder text, string name, Catalogue catalogue)
    {
        var job = JobFile.Read(Path.Combine(FiguresPage.Root, "examples", name, "job.yaml"), catalogue).Value ?? throw new InvalidOperationException($"{name} does not read.");
        var request = new PlanRequest(new DateOnly(2026, 11, 25)) { OnlyCheapest = true };
        // Until it is warm: what is worked out again and again is compiled anew while it runs.
        for (var i = 0; i < WarmRuns; i++)
            Planner.Propose(job, catalogue, request);
        var start = Used();
        double? first = null;
        var told = request with { Effort = PackEffort.Usual with { Told = (best, _) => first ??= best > 0 ? Used() - start : null } };
        var (_, cheapest) = Timed(() => Planner.Propose(job, catalogue, told));
        var (plan, all) = Timed(() => Planner.Propose(job, catalogue, request with { OnlyCheapest = false }));
        Line(text, $"| {name} | {first ?? cheapest:0.00} | {cheapest:0.00} | {all:0.00} | {plan.Studied} |");
        return (first ?? cheapest, all);
    }

    private static void Campuses(StringBuilder text, List<(string, double, double, string)> bars)
    {
        var problem = Campus.Of(Endpoints, Places);
        Line(text, $"\n| campus of {Endpoints} endpoints, {problem.Kinds.Count} groups of kind and reach, {Places} places | cost | bound | gap, % | s |\n| --- | ---: | ---: | ---: | ---: |");
        var better = new List<(double At, long Cost)>();
        foreach (var (work, bar) in new[] { (8.0, 2.0), (24.0, 1.0) })
        {
            var start = Used();
            var (packed, seconds) = Timed(() => Packer.Solve(problem, new PackEffort(work) { Told = (cost, _) => better.Add((Used() - start, cost)) }));
            better.Add((seconds, packed.Cost ?? long.MaxValue));
            Line(text, $"| work {work:0} | {packed.Cost} | {packed.Bound} | {100 * packed.Gap:0.00} | {seconds:0.0} |");
            bars.Add(($"gap of the campus in {seconds:0} s", 100 * (packed.Gap ?? 1), bar, "%"));
        }

        var (plain, plainSeconds) = Timed(() => PlainProgramme.Solve(problem, PlainSeconds));
        Line(text, $"| a plain integer programme in CBC | {plain.Cost:0} | {plain.Bound:0} | {100 * (plain.Cost - plain.Bound) / plain.Cost:0.00} | {plainSeconds:0.0} |\n");
        var same = better.Where(at => at.Cost <= (plain.Cost ?? double.PositiveInfinity)).Select(at => at.At).DefaultIfEmpty(double.PositiveInfinity).Min();
        bars.Add(("the planner to what the plain programme came to, share of its time", same / plainSeconds, 0.2, "x"));
    }

    private static (T Result, double Seconds) Timed<T>(Func<T> run)
    {
        var start = Used();
        var result = run();
        return (result, Used() - start);
    }

    // What else runs on the machine does not count: all that is measured here runs on one processor.
    private static double Used() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}

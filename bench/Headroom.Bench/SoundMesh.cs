using System.Globalization;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Binding;
using Headroom.JobFiles;

namespace Headroom.Bench;

/// <summary>Measures the levels of a room on a mesh: ten sources, one screen across the room.</summary>
internal static class SoundMesh
{
    private const int Side = 200;
    private const int Sources = 10;

    /// <summary>Writes the figures and the bar.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Catalogue catalogue)
    {
        var open = Milliseconds(catalogue, screen: false);
        var screened = Milliseconds(catalogue, screen: true);
        text.Append("## Levels of a room on a mesh\n\n| what | ms |\n| --- | ---: |\n");
        text.Append(CultureInfo.InvariantCulture, $"| {Side} x {Side} points, {Sources} sources | {open:0.0} |\n| the same with a screen across the room | {screened:0.0} |\n\n");
        bars.Add(($"levels on {Side} x {Side} points of {Sources} sources", open, 20, "ms"));
        bars.Add(("the same with a screen across the room", screened, 20, "ms"));
    }

    private static double Milliseconds(Catalogue catalogue, bool screen)
    {
        var noises = string.Concat(Enumerable.Range(1, Sources).Select(n => string.Create(CultureInfo.InvariantCulture, $"    n-{n}: {{in: hall, at: {n + 1} x {n % 5 + 2} x 0.9 m, power: {40 + n} dB(A)}}\n")));
        var screens = screen ? "  screens: {wall: {in: hall, kind: screen, from: 0 x 4.5 x 1.6 m, to: 14 x 4.5 x 1.6 m}}\n" : "";
        var yaml = $"headroom: 1\njob: mesh\nsurvey:\n  spaces: {{hall: {{size: 14 x 9 x 2.8 m, surfaces: average, background: 36 dB(A)}}}}\n  listeners: {{ear: {{in: hall, at: 7 x 4 x 1.2 m}}}}\n{screens}  noises:\n{noises}designs: {{only: {{}}}}\n";
        var loaded = JobFile.Parse(yaml, "job.yaml", catalogue);
        var job = loaded.Ok ? loaded.Value! : throw new InvalidOperationException(string.Join('\n', loaded.Findings));
        var result = AcousticStudy.Of(Binder.Bind(job, catalogue, job.Designs[0], []), _ => SwitchLoad.NotKnown);
        return Timing.Median(() => _ = SoundGrids.Of(result, "hall", (Side, Side), 1.2)!, 30);
    }
}

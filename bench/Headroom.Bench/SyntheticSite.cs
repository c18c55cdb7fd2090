using System.Globalization;
using System.Text;

namespace Headroom.Bench;

/// <summary>A made-up site of any size as a job file: 20 endpoints to a switch, every one with a drop and patched.</summary>
internal static class SyntheticSite
{
    private const int PerSwitch = 20;

    private static readonly string[] Models = ["pipit", "pipit", "bulrush", "sanderling", "pipit"];

    /// <summary>The text of the job file; with another number the lengths are others.</summary>
    public static string Yaml(int endpoints, int number = 0)
    {
        var text = new StringBuilder(endpoints * 160);
        text.Append("headroom: 1\njob: Synthetic site\nsurvey:\n  spaces:\n    closet: {kind: cupboard}\n    hall: {kind: open office}\n  drops:\n");
        for (var i = 1; i <= endpoints; i++)
            Line(text, $"    D-{i:00000}: {{from: closet, to: hall, length: {10 + (i * 37 + number) % 78} m, cable: cat6-23, ambient: {20 + i % 15} °C}}");
        text.Append("  endpoints:\n");
        for (var i = 1; i <= endpoints; i++)
            Line(text, $"    e-{i:00000}: {{model: {Models[i % Models.Length]}, drop: D-{i:00000}}}");
        text.Append("designs:\n  only:\n    switches:\n");
        var switches = (endpoints + PerSwitch - 1) / PerSwitch;
        for (var s = 1; s <= switches; s++)
            Line(text, $"      sw-{s}: {{model: wren-b}}");
        text.Append("    patch:\n");
        for (var i = 1; i <= endpoints; i++)
            Line(text, $"      D-{i:00000}: sw-{(i - 1) / PerSwitch + 1}/{(i - 1) % PerSwitch + 1}");
        return text.ToString();
    }

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}

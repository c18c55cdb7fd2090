using System.Text;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Editing;

/// <summary>A design as it stands in a job file. Where it starts from another, all that the other has and it has not is removed by name.</summary>
public static class WholeDesignText
{
    /// <summary>Writes it, without its id.</summary>
    /// <param name="design">The design, whole.</param>
    /// <param name="like">The whole design from which it takes its fittings; null when it has none.</param>
    /// <returns>The lines that stand under its id.</returns>
    public static string Of(Design design, Design? like)
    {
        var text = new StringBuilder();
        if (like is not null)
            Line(text, $"like: {YamlWriter.Text(like.Id)}");
        Section(text, "switches", Gone(like?.Switches.Select(unit => unit.Id), design.Switches.Select(unit => unit.Id)), design.Switches.Select(unit => (unit.Id, UnitText.Of(unit))));
        Section(text, "injectors", Gone(like?.Injectors.Select(unit => unit.Id), design.Injectors.Select(unit => unit.Id)), design.Injectors.Select(unit => (unit.Id, UnitText.Of(unit))));
        Section(text, "standby", Gone(like?.Standby.Select(unit => unit.Id), design.Standby.Select(unit => unit.Id)), design.Standby.Select(unit => (unit.Id, UnitText.Of(unit))));
        if (design.Uplinks is { Count: > 0 } uplinks)
        {
            Line(text, "uplinks:");
            foreach (var uplink in uplinks)
                Line(text, $"  - {UnitText.Of(uplink)}");
        }

        Section(text, "patch", Gone(like?.Patch.Select(patch => patch.What), design.Patch.Select(patch => patch.What)), design.Patch.Select(patch => (patch.What, patch.To.ToString())));
        return text.ToString();
    }

    private static IEnumerable<string> Gone(IEnumerable<string>? before, IEnumerable<string> now) => (before ?? []).Except(now);

    private static void Section(StringBuilder text, string key, IEnumerable<string> gone, IEnumerable<(string Id, string Value)> entries)
    {
        var lines = gone.Select(id => $"  {YamlWriter.Text(id)}: none").Concat(entries.Select(entry => $"  {YamlWriter.Text(entry.Id)}: {entry.Value}")).ToList();
        if (lines.Count == 0)
            return;
        Line(text, $"{key}:");
        foreach (var line in lines)
            Line(text, line);
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}

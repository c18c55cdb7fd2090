using System.Globalization;
using System.Text;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Editing;

/// <summary>Writes a design that says what differs from another as it stands in a job file.</summary>
public static class DesignText
{
    /// <summary>The text below the id of the design: sections in lines, each unit in braces.</summary>
    /// <param name="design">The design, as written and not whole. It takes nothing away and has no fittings.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentException">It takes something away or has fittings, which cannot be written here.</exception>
    public static string Of(Design design)
    {
        if (design.Removed.Count > 0 || design.Fittings.Count > 0)
            throw new ArgumentException("a design that takes something away or has fittings is not written here", nameof(design));
        var text = new StringBuilder();
        if (design.Like is { } like)
            text.Append("like: ").Append(YamlWriter.Text(like)).Append('\n');
        Section(text, "switches", 0, [.. design.Switches.Select(unit => (unit.Id, UnitText.Of(unit)))]);
        Section(text, "injectors", 0, [.. design.Injectors.Select(unit => (unit.Id, UnitText.Of(unit)))]);
        Section(text, "standby", 0, [.. design.Standby.Select(unit => (unit.Id, UnitText.Of(unit)))]);
        if (design.Uplinks is { } uplinks)
            text.Append("uplinks: [").AppendJoin(", ", uplinks.Select(UnitText.Of)).Append("]\n");
        Section(text, "patch", 0, [.. design.Patch.Select(patch => (patch.What, patch.To.ToString()))]);
        if (design.Building is { } building)
            Building(text, building);
        return text.ToString();
    }

    private static void Building(StringBuilder text, BuildingChange building)
    {
        text.Append("building:\n");
        Section(text, "drops", 2, [.. building.Drops.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "pathways", 2, [.. building.Pathways.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "spaces", 2, [.. building.Spaces.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "partitions", 2, [.. building.Partitions.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "racks", 2, [.. building.Racks.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "lines", 2, [.. building.Lines.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "endpoints", 2, [.. building.Endpoints.Select(change => (change.Id, ChangeText.Of(change)))]);
    }

    private static void Section(StringBuilder text, string key, int depth, List<(string Id, string Value)> things)
    {
        if (things.Count == 0)
            return;
        text.Append(CultureInfo.InvariantCulture, $"{new string(' ', depth)}{key}:\n");
        foreach (var (id, value) in things)
            text.Append(CultureInfo.InvariantCulture, $"{new string(' ', depth + 2)}{YamlWriter.Text(id)}: {value}\n");
    }
}

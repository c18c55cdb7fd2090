using System.Globalization;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>Makes of the values of a row the entry of a job file that says the same.</summary>
internal static class RowMaker
{
    /// <summary>The entry; null, with a finding, when the row does not say what it is about.</summary>
    public static YamlEntry? Make(SheetKind kind, SheetRow row, Dictionary<string, YamlScalar> values, SheetSlips slips)
    {
        if (kind == SheetKinds.Readings)
            CompleteReading(values);
        if (kind.IsList)
            return new YamlEntry(new YamlScalar("", YamlStyle.Plain, row.At, (0, 0)), MapOf(kind, row.At, values));
        if (kind == SheetKinds.Endpoints && !values.ContainsKey("endpoint"))
            return Counted(kind, row, values) ?? NoKey(kind, row, slips);
        if (!values.Remove(kind.Key!, out var key))
            return NoKey(kind, row, slips);
        if (kind != SheetKinds.Patching)
        {
            values.Remove("count");
            return new YamlEntry(key, MapOf(kind, row.At, values));
        }

        return new YamlEntry(key, Port(values, values["port"]));
    }

    /// <summary>True when an entry counts things of a model, so that two of them may have one key.</summary>
    public static bool IsCount(YamlEntry entry) => CountOf(entry.Key.Text) > 1;

    /// <summary>How many things a key counts: 12 for <c>12 x pipit</c>, 1 for a name.</summary>
    public static int CountOf(string key) =>
        key.IndexOf(" x ", StringComparison.Ordinal) is > 0 and var at && int.TryParse(key.AsSpan(0, at), NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : 1;

    private static YamlEntry? Counted(SheetKind kind, SheetRow row, Dictionary<string, YamlScalar> values)
    {
        if (!values.Remove("count", out var count) || !values.Remove("model", out var model))
            return null;
        return new YamlEntry(new YamlScalar($"{count.Text} x {model.Text}", YamlStyle.Plain, count.At, (0, 0)), MapOf(kind, row.At, values));
    }

    // A switch in one column and its port in another are one port; a port with its switch in front of it needs no column for it.
    private static YamlScalar Port(Dictionary<string, YamlScalar> values, YamlScalar port) =>
        values.TryGetValue("switch", out var unit) && !port.Text.StartsWith(unit.Text + "/", StringComparison.Ordinal)
            ? new YamlScalar($"{unit.Text}/{port.Text}", YamlStyle.Plain, port.At, (0, 0))
            : port;

    private static void CompleteReading(Dictionary<string, YamlScalar> values)
    {
        if (values.ContainsKey("what") || !values.TryGetValue("value", out var value))
            return;
        var unit = value.Text[(value.Text.LastIndexOf(' ') + 1)..];
        if (ReadingKinds.By(unit) is { } what)
            values["what"] = new YamlScalar(what, YamlStyle.Plain, value.At, (0, 0));
    }

    private static YamlEntry? NoKey(SheetKind kind, SheetRow row, SheetSlips slips)
    {
        slips.Refuse(SheetCodes.NoKey, row.At, ($"row {row.Number} does not say which {kind.Noun} it is about", $"a name under the heading for '{kind.Key}'", "write it, or take the row out"));
        return null;
    }

    // In the order in which people write such a thing, whatever the order of the columns.
    private static YamlMap MapOf(SheetKind kind, Place at, Dictionary<string, YamlScalar> values)
    {
        var entries = new List<YamlEntry>(values.Count);
        foreach (var field in kind.Fields)
        {
            if (values.TryGetValue(field.Name, out var value))
                entries.Add(new YamlEntry(new YamlScalar(field.Name, YamlStyle.Plain, value.At, (0, 0)), value));
        }

        return new YamlMap(entries, isFlow: true, at, (0, 0));
    }
}

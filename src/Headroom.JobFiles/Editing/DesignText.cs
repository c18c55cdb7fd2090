using System.Text;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Editing;

/// <summary>A design as it stands in a job file. Where it starts from another, all that the other has and it has not is removed by name.</summary>
public static class DesignText
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
        Section(text, "switches", Gone(like?.Switches.Select(unit => unit.Id), design.Switches.Select(unit => unit.Id)), design.Switches.Select(unit => (unit.Id, Braces(Parts(unit)))));
        Section(text, "injectors", Gone(like?.Injectors.Select(unit => unit.Id), design.Injectors.Select(unit => unit.Id)), design.Injectors.Select(unit => (unit.Id, Braces(Parts(unit)))));
        Section(text, "standby", Gone(like?.Standby.Select(unit => unit.Id), design.Standby.Select(unit => unit.Id)), design.Standby.Select(unit => (unit.Id, Braces(Parts(unit)))));
        if (design.Uplinks is { Count: > 0 } uplinks)
        {
            Line(text, "uplinks:");
            foreach (var uplink in uplinks)
                Line(text, $"  - {Braces(Parts(uplink))}");
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

    private static string Braces(IEnumerable<(string Key, string? Value)> parts) =>
        "{" + string.Join(", ", parts.Where(part => part.Value is not null).Select(part => $"{part.Key}: {part.Value}")) + "}";

    private static IEnumerable<(string, string?)> Parts(PlacedSwitch unit) =>
    [
        ("model", Text(unit.Model)),
        ("supply", Text(unit.Supply)),
        .. Where(unit.Standing),
        ("fed-by", Text(unit.FedBy)),
        ("reserves-by", unit.Setting.ReservesBy is { } by ? Way(by) : null),
        ("port-limit", Map(unit.Setting.PortLimits.OrderBy(limit => limit.Key).Select(limit => ($"{limit.Key}", limit.Value.Written)))),
        ("priority", Map(unit.Setting.EndpointPriorities.Select(priority => (YamlWriter.Text(priority.Key), priority.Value.ToString().ToLowerInvariant())))),
        ("passive", unit.PassivePorts is { } ports ? $"[{string.Join(", ", ports)}]" : null),
    ];

    private static IEnumerable<(string, string?)> Parts(PlacedInjector unit) =>
        [("model", Text(unit.Model)), .. Where(unit.Standing), ("fed-by", Text(unit.FedBy)), ("from", unit.From.Count > 0 ? unit.From[0].ToString() : null)];

    private static IEnumerable<(string, string?)> Parts(PlacedStandby unit) =>
    [
        ("model", Text(unit.Model)),
        .. Where(unit.Standing),
        ("also", Map((unit.Also ?? []).Select(also => (YamlWriter.Text(also.Name), also.Watts.Written)))),
        ("sheds", Map((unit.Sheds ?? []).Select(stage => (stage.Priority.ToString().ToLowerInvariant(), stage.After.Written)))),
    ];

    private static IEnumerable<(string, string?)> Parts(Uplink link) =>
        [("from", link.From.ToString()), ("to", link.To.ToString()), ("media", link.Media), ("module", Text(link.Module)), ("far module", Text(link.FarModule)), ("drop", Text(link.Drop))];

    private static IEnumerable<(string, string?)> Where(Standing standing) => [("in", Text(standing.In))];

    private static string? Map(IEnumerable<(string Key, string Value)> entries) => entries.ToList() is { Count: > 0 } all ? Braces(all.Select(entry => (entry.Key, (string?)entry.Value))) : null;

    private static string? Text(string? text) => text is null ? null : YamlWriter.Text(text);

    private static string Way(ReservesBy by) => by switch
    {
        ReservesBy.PortLimit => "port-limit",
        _ => by.ToString().ToLowerInvariant(),
    };
}

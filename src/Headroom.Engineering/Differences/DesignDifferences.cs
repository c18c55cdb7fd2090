using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Differences;

/// <summary>In what two whole designs of a job differ, in words.</summary>
public static class DesignDifferences
{
    private const string None = "none";

    /// <summary>Compares two designs unit by unit, then what is patched and the uplinks.</summary>
    /// <param name="before">The first, whole.</param>
    /// <param name="after">The second, whole.</param>
    /// <returns>The differences: units in the order of the first design, those only the second has behind them; empty when there is none.</returns>
    public static IReadOnlyList<DesignDifference> Of(Design before, Design after) =>
    [
        .. Units(before.Switches, after.Switches, unit => (unit.Id, unit.Model), Switch),
        .. Units(before.Injectors, after.Injectors, unit => (unit.Id, unit.Model), Injector),
        .. Units(before.Standby, after.Standby, unit => (unit.Id, unit.Model), Standby),
        .. Patches(before.Patch, after.Patch),
        .. Uplinks(before.Uplinks ?? [], after.Uplinks ?? []),
        .. BuildingDifferences.Of(before.Building, after.Building),
    ];

    private static IEnumerable<DesignDifference> Units<T>(
        IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, (string Id, string? Model)> name, Func<T, T, IEnumerable<string?>> compare)
        where T : class
    {
        foreach (var unit in before)
        {
            var (id, model) = name(unit);
            if (after.FirstOrDefault(other => name(other).Id == id) is not { } other)
            {
                yield return new(id, $"only in the first: {model}");
                continue;
            }

            var changes = compare(unit, other).Prepend(Changed("", model, name(other).Model)).OfType<string>().ToList();
            if (changes.Count > 0)
                yield return new(id, string.Join("; ", changes));
        }

        foreach (var unit in after.Where(unit => before.All(other => name(other).Id != name(unit).Id)))
            yield return new(name(unit).Id, $"only in the second: {name(unit).Model}");
    }

    private static IEnumerable<string?> Switch(PlacedSwitch before, PlacedSwitch after) =>
    [
        Changed("supply", before.Supply ?? "the model's first", after.Supply ?? "the model's first"),
        Standing(before.Standing, after.Standing),
        Changed("fed by", before.FedBy ?? "mains", after.FedBy ?? "mains"),
        Changed("fan", before.Fan ?? "the maker's", after.Fan ?? "the maker's"),
        Changed("way of its air", Airway(before.Air), Airway(after.Air)),
        Changed("level", before.Level?.ToString(Invariant), after.Level?.ToString(Invariant)),
        .. Setting(before.Setting, after.Setting),
        Changed("passive ports", Ports(before.PassivePorts), Ports(after.PassivePorts)),
    ];

    private static string Airway(AirwayChange? air) => air is null ? "as made" : string.Join(" and ", new[]
    {
        air.FreeThen is { } free ? $"grille opened to {free.Written}" : null, air.GapThen is { } gap ? $"moved to a gap of {gap.Written}" : null,
    }.OfType<string>());

    private static IEnumerable<string?> Injector(PlacedInjector before, PlacedInjector after) =>
    [
        Standing(before.Standing, after.Standing),
        Changed("fed by", before.FedBy ?? "mains", after.FedBy ?? "mains"),
        Changed("data from", string.Join(", ", before.From), string.Join(", ", after.From)),
    ];

    private static IEnumerable<string?> Standby(PlacedStandby before, PlacedStandby after) =>
    [
        Standing(before.Standing, after.Standing),
        Changed("age of its batteries", before.BatteryAge?.Written, after.BatteryAge?.Written),
    ];

    private static IEnumerable<string?> Setting(PowerSetting before, PowerSetting after) =>
    [
        Changed("reserves by", Word(before.ReservesBy), Word(after.ReservesBy)),
        Changed("at the start", Word(before.AtStart), Word(after.AtStart)),
        Changed("at a refusal", Word(before.AtRefusal), Word(after.AtRefusal)),
        Changed("retries", YesNo(before.Retries), YesNo(after.Retries)),
        Changed("sheds", Word(before.ShedOrder), Word(after.ShedOrder)),
        Changed("negotiated counts", Word(before.NegotiatedCounts), Word(after.NegotiatedCounts)),
        Changed("port limits", Limits(before), Limits(after)),
        Changed("priorities", Priorities(before), Priorities(after)),
    ];

    private static IEnumerable<DesignDifference> Patches(IReadOnlyList<Patch> before, IReadOnlyList<Patch> after)
    {
        var first = before.ToDictionary(patch => patch.What, patch => patch.To);
        var second = after.ToDictionary(patch => patch.What, patch => patch.To);
        var changes = first.Keys.Union(second.Keys)
            .Select(what => (What: what, From: To(first, what), To: To(second, what)))
            .Where(change => change.From != change.To)
            .Select(change => $"{change.What} on {change.To} in place of {change.From}").ToList();
        if (changes.Count > 0)
            yield return new("patch", Words.List(changes));
    }

    private static IEnumerable<DesignDifference> Uplinks(IReadOnlyList<Uplink> before, IReadOnlyList<Uplink> after)
    {
        string[] first = [.. before.Select(Link)], second = [.. after.Select(Link)];
        if (!first.SequenceEqual(second))
            yield return new("uplinks", $"{(second.Length == 0 ? None : Words.List(second))} in place of {(first.Length == 0 ? None : Words.List(first))}");
    }

    private static string? Standing(Standing before, Standing after) => Changed("stands in", Place(before), Place(after));

    private static string Place(Standing standing) => string.Join(
        ", ", new[] { standing.In ?? "no known place", standing.Unit is { } unit ? $"unit {unit}" : null, standing.Spot is { } spot ? $"at {spot.Written}" : null }.OfType<string>());

    private static string Link(Uplink link) =>
        string.Join(' ', new[] { $"{link.From} to {link.To}", link.Media, link.Module, link.Drop is { } drop ? $"on {drop}" : null }.OfType<string>());

    private static string To(Dictionary<string, PortRef> ports, string what) => ports.TryGetValue(what, out var port) ? port.ToString() : None;

    private static string? Changed(string what, string? before, string? after) => before == after
        ? null
        : $"{what} {after ?? "as the model does"} in place of {before ?? "as the model does"}".TrimStart();

    private static string Limits(PowerSetting setting) => setting.PortLimits.Count == 0 ? None : Words.List(
        [.. setting.PortLimits.GroupBy(pair => pair.Value.Written).Select(group => $"{group.Key} on {Words.Runs(group.Select(pair => pair.Key))}")]);

    private static string Priorities(PowerSetting setting) => setting.Priorities.Count + setting.EndpointPriorities.Count == 0 ? None : Words.List(
    [
        .. setting.Priorities.GroupBy(pair => pair.Value).OrderBy(group => group.Key).Select(group => $"{Word<Priority>(group.Key)} on {Words.Runs(group.Select(pair => pair.Key))}"),
        .. setting.EndpointPriorities.GroupBy(pair => pair.Value).OrderBy(group => group.Key)
            .Select(group => $"{Word<Priority>(group.Key)} for {Words.List([.. group.Select(pair => pair.Key).Order(StringComparer.Ordinal)])}"),
    ]);

    private static string? Ports(IReadOnlyList<int>? ports) => ports is null ? null : ports.Count == 0 ? None : Words.Runs(ports);

    private static string? YesNo(bool? value) => value is { } known ? known ? "yes" : "no" : null;

    // As it is written in a job file: PortLimit is port-limit there.
    private static string? Word<T>(T? value)
        where T : struct, Enum => value is { } known
        ? string.Concat(known.ToString().Select((letter, at) => at > 0 && char.IsUpper(letter) ? $"-{char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"))
        : null;

    private static IFormatProvider Invariant => System.Globalization.CultureInfo.InvariantCulture;
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>The switches of a design.</summary>
internal static class SwitchFields
{
    private static readonly Field<string> Model = new("model", Shapes.Name("a switch model"), "The model in the catalogue.", "wren-b");
    private static readonly Field<string> Supply = new("supply", Shapes.Name("a supply of the model"), "Which of the model's supplies is fitted; without it the first.", "large");
    private static readonly Field<int> Level = new("level", new CountShape(1, 20), "The fan level it runs at.", "2");
    private static readonly Field<string> Fan = new("fan", Shapes.Name("a fan model"), "The fan put in place of the maker's, where somebody changed it.", "puff");

    private static readonly Field<IReadOnlyList<Entry<PortRange, Given<Watts>>>> Limits = new(
        "port-limit",
        new MapShape<PortRange, Given<Watts>>("", new PortNumbersShape(), Sensible.PortWatts) { KeyExample = "5..16", ThingExample = "15.4 W" },
        "The most a port may give, by port.",
        "{5..16: 15.4 W}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, Enum>>> Priorities = new(
        "priority",
        new MapShape<IReadOnlyList<string>, Enum>(
            "",
            new NamesShape("an endpoint or drop, or the number of a port"),
            new WordShape<Enum>(("critical", Priority.Critical), ("high", Priority.High), ("low", Priority.Low))) { KeyExample = "ap-1", ThingExample = "critical" },
        "Who is served first and dropped last, by endpoint, drop or port.",
        "{ap-1: critical, 3: high}");

    private static readonly Field<IReadOnlyList<PortRange>> Passive = new(
        "passive",
        new ListShape<PortRange>("port", new PortNumbersShape()) { OrOne = true },
        "The ports on which passive voltage is switched on.",
        "[9, 10]");

    /// <summary>A switch.</summary>
    public static ObjectShape<PlacedSwitch> Shape { get; } = new(
        "switch",
        [Model, Supply, .. StandingFields.All, StandingFields.FedBy, Level, Fan, AirwayFields.Air, .. SettingFields.All, Limits, Priorities, Passive],
        Build)
    {
        About = "What a design does not say, the design it is like says, then the model. How it hands out watts decides the power verdict.",
    };

    private static PlacedSwitch Build(Values values) => new(
        "",
        values.Get(Model),
        values.Get(Supply),
        StandingFields.Build(values),
        values.Get(StandingFields.FedBy),
        values.Maybe(Level),
        SettingOf(values),
        values.Get(Passive) is { } ranges ? [.. ranges.SelectMany(range => range.Numbers()).Distinct()] : null,
        values.At) { Fan = values.Get(Fan), Air = values.Get(AirwayFields.Air) };

    private static PowerSetting SettingOf(Values values)
    {
        var byPort = new Dictionary<int, Priority>();
        var byName = new Dictionary<string, Priority>();
        foreach (var entry in values.List(Priorities))
        {
            foreach (var name in entry.Key)
            {
                if (PortNumbers.Read(name) is { } port)
                    byPort[port.First] = (Priority)entry.Value;
                else
                    byName[name] = (Priority)entry.Value;
            }
        }

        return SettingFields.Build(values) with { PortLimits = LimitsOf(values), Priorities = byPort, EndpointPriorities = byName };
    }

    private static Dictionary<int, Given<Watts>> LimitsOf(Values values)
    {
        var limits = new Dictionary<int, Given<Watts>>();
        var places = new Dictionary<string, Domain.Findings.Place>();
        foreach (var entry in values.List(Limits))
        {
            foreach (var port in entry.Key.Numbers().Where(port => Named.First($"port {port}", entry.At, places, values.Reader)))
                limits.Add(port, entry.Value);
        }

        return limits;
    }
}

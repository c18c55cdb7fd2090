using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>The ports of a switch in groups alike.</summary>
internal static class PortFields
{
    /// <summary>The types of port power; none inside for a port that gives no power.</summary>
    public static Shape<OrNone<string>> Powers { get; } = Removable.Of(Shapes.Words("af", "at", "type 3", "type 4"));

    /// <summary>The data rates of a port.</summary>
    public static Field<IReadOnlyList<Given<BitsPerSecond>>> Speed { get; } = new(
        "speed", new ListShape<Given<BitsPerSecond>>("speed", Sensible.Rate) { OrOne = true }, "The data rates it can run at.", "[1 Gb/s, 2.5 Gb/s]");

    private static readonly Field<Given<Volts>> Volts = new("volts", () => Sensible.CableVolts, "The voltage.", "24 V") { IsRequired = true };
    private static readonly Field<Given<Amperes>> Current = new("current", () => Sensible.SmallCurrent, "The most it can give.", "0.5 A");
    private static readonly Field<int> Pairs = new("pairs", new CountShape(2, 4), "On how many pairs, 2 or 4.", "2");
    private static readonly Field<bool> AlwaysOn = new("always on", Shapes.Yes, "Whether it cannot be switched off.", "no");

    /// <summary>A voltage that is put on the pins without asking.</summary>
    public static Field<PassiveOutput> Passive { get; } = new(
        "passive",
        new EitherShape<PassiveOutput>(
            (node => node is YamlMap, new ObjectShape<PassiveOutput>("passive output", [Volts, Current, Pairs, AlwaysOn], values =>
                new PassiveOutput(values.Must(Volts), values.Get(Current), values.Maybe(Pairs), values.Maybe(AlwaysOn) ?? false))),
            (_ => true, new As<Given<Volts>, PassiveOutput>(Sensible.CableVolts, (volts, _) => new PassiveOutput(volts, null, null, false)))),
        "The voltage it puts on the pins without asking what is plugged in.",
        "{volts: 24 V, current: 0.5 A, pairs: 2, always on: no}");

    private static readonly Field<string> Media = new("media", Shapes.Words("copper", "pluggable"), "What is plugged in: a copper cable, or a module.", "copper") { IsRequired = true };
    private static readonly Field<OrNone<string>> Power = new("power", Powers, "The type of port power (IEEE 802.3), or none.", "at") { IsRequired = true };

    /// <summary>Groups of ports by their numbers.</summary>
    public static MapShape<PortRange, PortGroup> Map { get; } = new(
        "ports",
        new PortNumbersShape(),
        new ObjectShape<PortGroup>("group of ports", [Speed, Media, Power, Passive], values =>
            new PortGroup(0, 0, values.Must(Media), values.List(Speed), TypeOf(values.Must(Power).Thing), values.Get(Passive))))
    {
        KeyExample = "1..8",
    };

    /// <summary>The type of port power of a word; null for none.</summary>
    public static PoeType? TypeOf(string? word) => word switch
    {
        "af" => PoeType.Type1,
        "at" => PoeType.Type2,
        "type 3" => PoeType.Type3,
        "type 4" => PoeType.Type4,
        _ => null,
    };

    /// <summary>The groups in order, checked for ports that are in two or in none.</summary>
    public static IReadOnlyList<PortGroup> Groups(IReadOnlyList<Entry<PortRange, PortGroup>> entries, FieldReader reader)
    {
        // Not by a query: ordering by a number would be compiled at each start.
        var groups = new List<Entry<PortRange, PortGroup>>(entries);
        groups.Sort((one, other) => one.Key.First != other.Key.First ? one.Key.First.CompareTo(other.Key.First) : one.At.Line.CompareTo(other.At.Line));
        for (var i = 0; i < groups.Count; i++)
        {
            var next = i == 0 ? 1 : groups[i - 1].Key.Last + 1;
            Check(groups[i].Key.First, next, groups[i].At, reader);
        }

        return [.. groups.Select(entry => entry.Value with { First = entry.Key.First, Last = entry.Key.Last })];
    }

    private static void Check(int first, int next, Place at, FieldReader reader)
    {
        if (first < next)
            reader.Refuse(ModelSlips.PortsTwice, at, $"port {first} of {reader.Name} is in two groups", $"each port in one group: this one from {next} on", "change the ends of one of the groups");
        else if (first > next)
            reader.Ask(ModelSlips.PortsMissing, at, $"{reader.Name} has no port {next}", $"ports numbered without a gap: this group from {next} on", "write the missing ports, unless the numbers on the front have the gap too");
    }
}

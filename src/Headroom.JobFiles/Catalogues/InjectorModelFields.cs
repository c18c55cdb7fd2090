using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Injector and midspan models.</summary>
internal static class InjectorModelFields
{
    private static readonly Field<int> Ports = new("ports", new CountShape(1, 96), "How many powered ports.", "1") { IsRequired = true };
    private static readonly Field<OrNone<string>> Power = new("power", () => PortFields.Powers, "The type of port power (IEEE 802.3); none when it is passive.", "at");
    private static readonly Field<Given<BitsPerSecond>> Speed = new("speed", () => Sensible.Rate, "The highest data rate it passes on.", "1 Gb/s");
    private static readonly Field<SupplyModel> Supply = new("supply", () => SupplyFields.Shape, "Its supply.", "{ports together: 31 W, port volts: 55 V, rated: 34 W}") { IsRequired = true };

    /// <summary>An injector model.</summary>
    public static ObjectShape<InjectorModel> Shape { get; } = new(
        "injector model", [.. BodyFields.First, Ports, Power, PortFields.Passive, Speed, Supply, .. BodyFields.Last], Build);

    private static InjectorModel Build(Values values)
    {
        var type = PortFields.TypeOf(values.Get(Power)?.Thing);
        if (type is not null && values.Entry(PortFields.Passive) is { } passive)
            values.Reader.Refuse(Slips.Excluding, passive.Key.At, $"{values.Reader.Name} has 'power' and 'passive'", "one of the two", "keep 'power' when it asks before it gives, else 'passive'");
        if (type is null && values.Entry(PortFields.Passive) is null)
            values.Reader.Refuse(Slips.Missing, values.At, $"neither 'power' nor 'passive' of {values.Reader.Name} is written", Power.Shape.InWords, "write 'power: at', or 'passive: 24 V'");
        return new InjectorModel(
            BodyFields.Build(values), values.Must(Ports), type, values.Get(PortFields.Passive), values.Get(Speed), values.Must(Supply));
    }
}

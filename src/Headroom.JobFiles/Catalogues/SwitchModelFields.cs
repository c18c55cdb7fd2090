using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Switch models.</summary>
internal static class SwitchModelFields
{
    private static readonly Field<IReadOnlyList<Entry<PortRange, PortGroup>>> Ports = new(
        "ports", () => PortFields.Map, "Its ports, in groups alike, by the numbers printed on them.", "{1..8: {speed: 1 Gb/s, media: copper, power: at}}") { IsRequired = true };

    private static readonly Field<IReadOnlyList<Entry<string, SupplyModel>>> Supplies = new(
        "supplies",
        new MapShape<string, SupplyModel>("supply", Shapes.Name("a supply"), SupplyFields.Shape) { KeyExample = "small", IsCompleted = true },
        "The supplies it can have; the first is the usual one.",
        "{small: {ports together: 123 W, port volts: 54 V, rated: 180 W}}") { IsRequired = true };

    private static readonly Field<Given<Watts>> Base = new("base", () => Sensible.SupplyWatts, "What it draws itself, behind its supply, without powered ports.", "14 W");
    private static readonly Field<Given<Share>> Path = new("path efficiency", () => Sensible.Efficiency, "Share of the port watts that reaches the ports, behind the supply.", "97 %");

    private static readonly Field<IReadOnlyList<Enum>> Offers = new(
        "offers", new ListShape<Enum>("way", SettingFields.Ways), "The ways of reserving it can be set to.", "[class, port-limit, negotiated]");

    private static readonly Field<string> Fan = new("fan", Shapes.Name("a fan model"), "The fan its maker fits, by its model; the last fan level is then its full speed.", "flurry");
    private static readonly Field<Given<Seconds>> Boot = new("boot", () => Sensible.Boot, "How long it takes from power to the first port served.", "95 s measured");
    private static readonly Field<Given<BitsPerSecond>> Switching = new("switching", () => Sensible.Switching, "Switching capacity.", "52 Gb/s");
    private static readonly Field<Given<PacketsPerSecond>> Forwarding = new("forwarding", () => Sensible.Frames, "Forwarding rate.", "38.7 Mframes/s");

    /// <summary>A switch model.</summary>
    public static ObjectShape<SwitchModel> Shape { get; } = new(
        "switch model",
        [.. BodyFields.First, Ports, Supplies, Base, Path, .. SettingFields.All, Offers, Boot, SoundFields.Sound, Fan, Switching, Forwarding, .. BodyFields.Last],
        Build);

    private static SwitchModel Build(Values values) => new(
        BodyFields.Build(values),
        PortFields.Groups(values.Must(Ports), values.Reader),
        [.. values.Must(Supplies).Select(entry => entry.Value with { Id = entry.Key })],
        values.Get(Base),
        values.Get(Path),
        SettingFields.Build(values),
        Array.ConvertAll(values.List(Offers).ToArray(), way => (ReservesBy)way),
        values.Get(SoundFields.Sound),
        values.Get(Switching),
        values.Get(Forwarding)) { Boot = values.Get(Boot), Fan = values.Get(Fan) };
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Pluggable modules.</summary>
internal static class ModuleModelFields
{
    private static readonly Field<Given<BitsPerSecond>> Speed = new("speed", () => Sensible.Rate, "Its data rate.", "10 Gb/s") { IsRequired = true };
    private static readonly Field<string> Media = new("media", Shapes.Words("multimode", "singlemode", "copper", "direct"), "What it runs on.", "multimode") { IsRequired = true };
    private static readonly Field<Given<Nanometres>> Wavelength = new("wavelength", () => Sensible.Wavelength, "The wavelength it sends.", "850 nm");
    private static readonly Field<Given<Nanometres>> Receives = new("receives", () => Sensible.Wavelength, "The wavelength it receives, where that is another.", "1310 nm");

    private static readonly Field<IReadOnlyList<Entry<string, Given<Metres>>>> Reach = new(
        "reach",
        new MapShape<string, Given<Metres>>("", Shapes.Words("OM1", "OM2", "OM3", "OM4", "OM5", "OS1a", "OS2", "copper", "direct"), Sensible.Reach) { KeyExample = "OM3", ThingExample = "300 m" },
        "How far it reaches, by category of the fibre, or by copper.",
        "{OM3: 300 m, OM4: 400 m}");

    private static readonly Field<Given<Decibels>> LossBudget = new("loss budget", () => Sensible.Loss, "The loss of light it bears at least.", "2.6 dB");
    private static readonly Field<Given<Watts>> Draw = new("draw", () => Sensible.Draw, "What it draws from the switch.", "0.8 W");

    private static readonly Field<string> PortType = new(
        "port type",
        Shapes.Words("1000BASE-SX", "1000BASE-LX", "1000BASE-LX10", "10GBASE-SR", "10GBASE-LR", "10GBASE-LRM"),
        "The port type of the Ethernet standard, which says what each kind of fibre may lose.",
        "10GBASE-SR");

    private static readonly Field<string> Connector = new("connector", Shapes.Words("LC", "SC", "RJ45"), "The plug it takes.", "LC");

    /// <summary>A module model.</summary>
    public static ObjectShape<ModuleModel> Shape { get; } = new(
        "module model",
        [.. BodyFields.First, Speed, Media, PortType, Connector, Wavelength, Receives, Reach, LossBudget, Draw, .. BodyFields.Last],
        values => new ModuleModel(
            BodyFields.Build(values),
            values.Must(Speed),
            values.Must(Media),
            values.Get(Wavelength),
            values.Get(Receives),
            values.List(Reach).ToDictionary(entry => entry.Key, entry => entry.Value),
            values.Get(LossBudget),
            values.Get(Draw))
        {
            PortType = values.Get(PortType),
            Connector = values.Get(Connector),
        });
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What changes with the years.</summary>
internal static class YearsFields
{
    // More than twice as many again in one year is another site.
    private const double MostGrowth = 2;

    private static readonly Field<IReadOnlyList<Entry<string, Reserve>>> Devices = new(
        "devices",
        () => new MapShape<string, Reserve>("", Shapes.Name("a kind of endpoint or a model"), new ReserveShape(ReserveKinds.Devices, "devices", MostGrowth)) { KeyExample = "camera", ThingExample = "10 %" },
        "What is added in a year, by kind of endpoint or by model: a share of what there is, or a number; {} for nothing.",
        "{camera: 1, phone: 10 %}");

    private static readonly Field<Given<Share>> Prices = new("prices", () => Sensible.Yearly, "By how much goods become dearer in a year.", "3 % assumed");
    private static readonly Field<Given<Share>> Wages = new("wages", () => Sensible.Yearly, "By how much an hour becomes dearer in a year.", "4 % assumed");
    private static readonly Field<Given<Share>> Energy = new("energy", () => Sensible.Yearly, "By how much a kilowatt-hour becomes dearer in a year.", "5 % assumed");
    private static readonly Field<Given<Share>> AirLost = new("air lost", () => Sensible.Yearly, "What dust takes of the air of every fan in a year, until it is cleaned.", "6 % assumed");
    private static readonly Field<Given<Seconds>> Cleaned = new("cleaned every", () => Sensible.Repeated, "How often the dust is taken out; never without it.", "2 years");
    private static readonly Field<DateOnly> Installed = new("installed", Shapes.Day, "The day it was handed over, from which warranties, tests and cleaning run.", "2026-12-14");
    private static readonly Field<Given<Seconds>> Warranty = new("warranty", () => Sensible.Years, "The warranty of units whose model says none.", "2 years");

    private static readonly Field<IReadOnlyList<Entry<string, Given<Seconds>>>> Tests = new(
        "tests",
        () => new MapShape<string, Given<Seconds>>("", Shapes.Name("a test"), Sensible.Repeated) { KeyExample = "cords and plugs", ThingExample = "2 years" },
        "What is to be tested again and again, and how often.",
        "{minutes on battery: 1 year, cords and plugs: 2 years}");

    /// <summary>The keys.</summary>
    public static Field<YearsPolicy> Years { get; } = new(
        "years",
        () => new ObjectShape<YearsPolicy>("years to come", [Devices, Prices, Wages, Energy, AirLost, Cleaned, Installed, Warranty, Tests], Build)
        {
            About = "What changes with the years. 'headroom years' works out what becomes short by it, and when. What is left out is not known.",
        },
        "What changes with the years.",
        "{devices: {camera: 1}, prices: 3 %, installed: 2026-12-14}");

    private static YearsPolicy Build(Values values) => new(
        values.Get(Devices) is { } devices ? [.. devices.Select(entry => new DeviceGrowth(entry.Key, entry.Value, entry.At))] : null,
        values.Get(Prices),
        values.Get(Wages),
        values.Get(Energy),
        values.Get(AirLost),
        values.Get(Cleaned),
        values.Maybe(Installed),
        values.Get(Warranty),
        [.. values.List(Tests).Select(entry => new RepeatedTest(entry.Key, entry.Value))])
    {
        At = values.At,
    };
}

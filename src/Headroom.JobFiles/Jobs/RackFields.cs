using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Racks and wall cabinets.</summary>
internal static class RackFields
{
    private static readonly Field<string> In = new("in", Shapes.Name("a space"), "The space it stands in.", "cupboard") { IsRequired = true };
    private static readonly Field<Given<RackUnits>> Height = new("height", () => Sensible.Units, "Usable height.", "12 U");
    private static readonly Field<Given<Metres>> Depth = new("depth", () => Sensible.Part, "Usable depth behind the front rails.", "480 mm");
    private static readonly Field<Given<Kilograms>> Load = new("load", () => Sensible.Mass, "The most it may carry.", "35 kg");
    private static readonly Field<Given<Metres>> Plugs = new("plugs behind", () => Sensible.Part, "Depth that plugs and cables need behind a unit.", "50 mm");

    private static readonly Field<string> Cabinet = new("cabinet", Shapes.Name("a cabinet model"), "The cabinet it is, by its model in the catalogue; left out for an open frame.", "alcove");
    private static readonly Field<Given<Spot>> At = new("at", () => Boxes.Spot, "Where its middle is in the space.", "0.6 x 0.3 x 1.4 m");

    /// <summary>The racks by name.</summary>
    public static MapShape<IReadOnlyList<string>, Rack> Map { get; } = Named.Map(
        "rack",
        new ObjectShape<Rack>(
            "rack",
            [In, At, Height, Depth, Load, Plugs, Cabinet],
            values => new Rack("", values.Must(In), values.Get(Height), values.Get(Depth), values.Get(Load), values.Get(Plugs), values.At) { Cabinet = values.Get(Cabinet), Spot = values.Get(At) }) { About = "A rack or wall cabinet." },
        "A");
}

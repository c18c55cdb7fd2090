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
    private static readonly Field<Given<Metres>> Front = new("front", () => Sensible.Gap, "Room between the front rails and a door, for plugs and cords; left out where there is no door.", "65 mm");
    private static readonly Field<string> Fixed = new("fixed", Shapes.Words("wall", "floor", "nothing"), "What it is fixed to.", "wall");
    private static readonly Field<Given<Kilograms>> FixingLoad = new("fixing load", () => Sensible.Mass, "The most that its screws and the wall behind them hold.", "70 kg");
    private static readonly Field<int> Outlets = new("outlets", new CountShape(0, 100), "Mains outlets in it or beside it that are free.", "4");
    private static readonly Field<Given<Spot>> At = new("at", () => Boxes.Spot, "Where its middle is in the space.", "0.6 x 0.3 x 1.4 m");
    private static readonly Field<bool> Blanked = new("blanked", Shapes.Yes, "Whether panels close its empty units, so that warm air does not come back to the front.", "yes");

    /// <summary>The racks by name.</summary>
    public static MapShape<IReadOnlyList<string>, Rack> Map { get; } = Named.Map(
        "rack",
        new ObjectShape<Rack>(
            "rack",
            [In, At, Height, Depth, Front, Load, Plugs, Cabinet, Fixed, FixingLoad, Outlets, Blanked],
            values => new Rack("", values.Must(In), values.Get(Height), values.Get(Depth), values.Get(Load), values.Get(Plugs), values.At) {
                Cabinet = values.Get(Cabinet),
                Spot = values.Get(At),
                Front = values.Get(Front),
                Fixed = values.Get(Fixed),
                FixingLoad = values.Get(FixingLoad),
                Outlets = values.Maybe(Outlets),
                Blanked = values.Maybe(Blanked),
            }) { About = "A rack or wall cabinet." },
        "A");
}

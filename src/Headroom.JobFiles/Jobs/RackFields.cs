using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Racks and wall cabinets.</summary>
internal static class RackFields
{
    private static readonly Field<string> In = new("in", Shapes.Name("a space"), "The space it stands in.", "cupboard") { IsRequired = true };
    private static readonly Field<Given<RackUnits>> Height = new("height", Sensible.Units, "Usable height.", "12 U");
    private static readonly Field<Given<Metres>> Depth = new("depth", Sensible.Part, "Usable depth behind the front rails.", "480 mm");
    private static readonly Field<Given<Kilograms>> Load = new("load", Sensible.Mass, "The most it may carry.", "35 kg");
    private static readonly Field<Given<Metres>> Plugs = new("plugs behind", Sensible.Part, "Depth that plugs and cables need behind a unit.", "50 mm");

    /// <summary>The racks by name.</summary>
    public static MapShape<IReadOnlyList<string>, Rack> Map { get; } = Named.Map(
        "rack",
        new ObjectShape<Rack>(
            "rack",
            [In, Height, Depth, Load, Plugs],
            values => new Rack("", values.Must(In), values.Get(Height), values.Get(Depth), values.Get(Load), values.Get(Plugs), values.At)) { About = "A rack or wall cabinet." },
        "A");
}

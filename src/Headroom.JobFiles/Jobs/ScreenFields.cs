using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Desks, counters and screens.</summary>
internal static class ScreenFields
{
    private static readonly Field<string> In = new("in", Shapes.Name("a space"), "The space.", "reception") { IsRequired = true };
    private static readonly Field<string> Kind = new("kind", Shapes.Words("desk", "screen"), "A desk has a top at the height of its edge; a screen is closed from the floor up to it.", "desk") { IsRequired = true };
    private static readonly Field<Given<Spot>> From = new("from", () => Boxes.Spot, "One end of the edge, from the corner of the space.", "2 x 1 x 0.74 m") { IsRequired = true };
    private static readonly Field<Given<Spot>> To = new("to", () => Boxes.Spot, "The other end of the edge.", "3.6 x 1 x 0.74 m") { IsRequired = true };
    private static readonly Field<Given<Metres>> Depth = new("depth", () => Sensible.Part, "How far the top of a desk reaches back from its edge.", "800 mm");

    /// <summary>The screens by name.</summary>
    public static MapShape<IReadOnlyList<string>, Screen> Map { get; } = Named.Map(
        "screen",
        new ObjectShape<Screen>(
            "screen",
            [In, Kind, From, To, Depth],
            values => new Screen("", values.Must(In), values.Must(Kind), values.Must(From), values.Must(To), values.Get(Depth), values.At))
        {
            About = "Something with an edge round which sound must go: the edge of a desk towards the listener, the top of a counter or screen.",
        },
        "counter");
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Equipment of the client's own that is heard.</summary>
internal static class NoiseFields
{
    private static readonly Field<string> In = new("in", Shapes.Name("a space"), "The space it stands in.", "reception") { IsRequired = true };
    private static readonly Field<Given<Spot>> At = new("at", () => Boxes.Spot, "The spot in the space.", "4.1 x 0.5 x 0.8 m");
    private static readonly Field<int> Count = new("count", new CountShape(1, 100), "How many alike stand there.", "1");

    /// <summary>The noises by name.</summary>
    public static MapShape<IReadOnlyList<string>, Noise> Map { get; } = Named.Map(
        "noise",
        new ObjectShape<Noise>("noise", [In, At, Count, .. SoundFields.OfLevel], Build)
        {
            About = "Equipment of the client's own that is heard and stays. Without a level it is unknown, not silent.",
        },
        "copier");

    private static Noise? Build(Values values) => SoundFields.BuildLevel(values) is { } sound
        ? new Noise("", values.Must(In), values.Get(At), values.Maybe(Count) ?? 1, sound, values.At)
        : null;
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>People who must not be disturbed.</summary>
internal static class ListenerFields
{
    private static readonly Field<string> In = new("in", Shapes.Name("a space"), "The space.", "reception") { IsRequired = true };
    private static readonly Field<Given<Spot>> At = new("at", () => Boxes.Spot, "Where the ear is, from the corner of the space.", "2.2 x 1.4 x 1.2 m");
    private static readonly Field<Given<SoundPressure>> Limit = new("limit", () => Sensible.Loudness, "The most that may be heard there.", "40 dB(A)");
    private static readonly Field<string> Why = new("why", Shapes.Text, "Where the limit comes from.", "client asked");

    private static readonly Field<IReadOnlyList<string>> When = new(
        "when", new ListShape<string>("case", Shapes.Name("a case of temperature")) { OrOne = true }, "The cases of temperature in which somebody is there; without it all of them.", "[weekday, summer]");

    /// <summary>The listeners by name.</summary>
    public static MapShape<IReadOnlyList<string>, Listener> Map { get; } = Named.Map(
        "listener",
        new ObjectShape<Listener>(
            "listener",
            [In, At, Limit, Why, When],
            values => new Listener("", values.Must(In), values.Get(At), values.Get(Limit), values.Get(Why), values.At) { When = values.List(When) }) { About = "A person at a spot who must not be disturbed." },
        "desk");
}

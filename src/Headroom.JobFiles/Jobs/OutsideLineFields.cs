using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Lines that lead out of the house.</summary>
internal static class OutsideLineFields
{
    private static readonly Field<Given<BitsPerSecond>> Down = new("down", () => Sensible.DataFlow, "What it gives towards the house, at least.", "250 Mb/s");
    private static readonly Field<Given<BitsPerSecond>> Up = new("up", () => Sensible.DataFlow, "What it takes from the house, at least.", "40 Mb/s");
    private static readonly Field<Given<Share>> Works = new("works", () => Sensible.Works, "Share of the time that it works, as its contract says.", "99.5 %");

    private static readonly Field<IReadOnlyList<string>> Boxes = new(
        "boxes",
        () => new ListShape<string>("box", Shapes.Name("a box")) { OrOne = true },
        "The boxes between the last switch and the line; without it one, called as the uplink calls it.",
        "[router, line-box]");

    private static readonly Field<Given<Seconds>> Boot = new("boot", () => Sensible.Boot, "How long they take from the mains coming back until the line is there.", "3 min measured");

    /// <summary>The lines by name.</summary>
    public static MapShape<IReadOnlyList<string>, Line> Map { get; } = Named.Map(
        "outside line",
        new ObjectShape<Line>("outside line", [Down, Up, Works, Boxes, Boot], values => new Line("", values.Get(Down), values.Get(Up), values.Get(Works), values.At) { Boxes = values.List(Boxes), Boot = values.Get(Boot) })
        {
            About = "A line that leads out of the house. Uplinks lead to it by its name. In an outage each box at its end needs a battery, or nothing that uses the line works.",
        },
        "line");
}

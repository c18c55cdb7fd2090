using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What is wanted of an outage, and what stands at the line.</summary>
internal static class OutageFields
{
    private static readonly Field<Given<Seconds>> Runtime = new("runtime", () => Sensible.Lasts, "How long standby supplies must hold.", "20 min");

    private static readonly Field<IReadOnlyList<string>> Keep = new(
        "keep",
        () => new ListShape<string>("name", Shapes.Name("a kind of endpoint, an endpoint or a switch")) { OrOne = true },
        "What must go on working: kinds of endpoint such as phone, or single endpoints and switches. All on its way to the line must then be on a battery.",
        "[phone, door]");

    private static readonly Field<Given<Seconds>> BackWithin = new("back within", () => Sensible.Moment, "How soon after the mains is back these must work again.", "5 min");

    private static readonly Field<IReadOnlyList<string>> Boxes = new(
        "boxes",
        () => new ListShape<string>("box", Shapes.Name("a box")) { OrOne = true },
        "The boxes between the last switch and the line; without it one, called as the uplink calls it.",
        "[router, line-box]");

    private static readonly Field<Given<Seconds>> Boot = new("boot", () => Sensible.Boot, "How long they take from the mains coming back until the line is there.", "3 min measured");

    /// <summary>What is wanted of an outage.</summary>
    public static Field<OutagePolicy> Outage { get; } = new(
        "outage",
        () => new ObjectShape<OutagePolicy>("outage", [Runtime, Keep, BackWithin], values => new OutagePolicy(values.Get(Runtime), values.List(Keep), values.Get(BackWithin)))
        {
            About = "What is wanted when the mains fails and when it comes back.",
        },
        "What is wanted of an outage of the mains.",
        "{runtime: 20 min, keep: [phone], back within: 5 min}");

    /// <summary>What stands between the job and the line.</summary>
    public static Field<LineBoxes> Line { get; } = new(
        "line",
        () => new ObjectShape<LineBoxes>("line", [Boxes, Boot], values => new LineBoxes(values.List(Boxes), values.Get(Boot)))
        {
            About = "What stands between the last switch and the line. In an outage each box of it needs a battery, or nothing that uses the line works.",
        },
        "What stands between the job and the line.",
        "{boxes: [router, line-box], boot: 3 min}");
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What is wanted of an outage.</summary>
internal static class OutageFields
{
    private static readonly Field<Given<Seconds>> Runtime = new("runtime", () => Sensible.Lasts, "How long standby supplies must hold.", "20 min");

    private static readonly Field<IReadOnlyList<string>> Keep = new(
        "keep",
        () => new ListShape<string>("name", Shapes.Name("a kind of endpoint, an endpoint or a switch")) { OrOne = true },
        "What must go on working: kinds of endpoint such as phone, or single endpoints and switches. All on its way to the line must then be on a battery.",
        "[phone, door]");

    private static readonly Field<Given<Seconds>> BackWithin = new("back within", () => Sensible.Moment, "How soon after the mains is back these must work again.", "5 min");

    /// <summary>What is wanted of an outage.</summary>
    public static Field<OutagePolicy> Outage { get; } = new(
        "outage",
        () => new ObjectShape<OutagePolicy>("outage", [Runtime, Keep, BackWithin], values => new OutagePolicy(values.Get(Runtime), values.List(Keep), values.Get(BackWithin)))
        {
            About = "What is wanted when the mains fails and when it comes back.",
        },
        "What is wanted of an outage of the mains.",
        "{runtime: 20 min, keep: [phone], back within: 5 min}");
}

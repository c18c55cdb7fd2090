using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What a house bears of failures.</summary>
internal static class FailureFields
{
    private static readonly Field<int> MostDark = new("most dark", () => new CountShape(0, 100_000), "How many endpoints may go dark or be cut off when one thing fails.", "12");
    private static readonly Field<Given<Seconds>> MostLost = new("lost in a year", () => Sensible.Lost, "How long in a year an endpoint may be without power or without the line.", "8 h");
    private static readonly Field<Given<Seconds>> Repair = new("repair", () => Sensible.Lost, "How long until somebody is on site with the part; a day without it.", "24 h");
    private static readonly Field<Given<Share>> Common = new("common cause", () => Sensible.Share, "Share of failures that strike both of two alike at once; 5 % without it.", "5 %");

    private static readonly Field<bool> SupplyMayFail = new("a supply may fail", Shapes.Yes, "Whether every switch and midspan must go on feeding all its ports when one of its supplies fails.", "yes");

    /// <summary>The rules.</summary>
    public static Field<FailureRules> Failures { get; } = new(
        "failures",
        () => new ObjectShape<FailureRules>("failures", [MostDark, MostLost, Repair, Common, SupplyMayFail], values =>
            new FailureRules(values.Maybe(MostDark), values.Get(MostLost), values.Get(Repair), values.Get(Common)) { SupplyMayFail = values.Maybe(SupplyMayFail) == true })
        {
            About = "What the house bears of failures. What it does not set is told and not judged.",
        },
        "What the house bears of failures.",
        "{most dark: 12, lost in a year: 8 h, repair: 24 h}");
}

using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>Says how each switch is set, and what another setting would refuse.</summary>
internal static class SettingWords
{
    /// <summary>A line for each switch that gives power; those of which the same is true share one.</summary>
    public static IEnumerable<string> Of(Candidate found, JobPacking packing) => Each(found, packing).GroupBy(line => line.Words)
        .Select(group => $"{string.Join(", ", group.Select(line => line.Unit))} {(group.Count() > 1 ? "are" : "is")} set {group.Key}");

    private static IEnumerable<(string Unit, string Words)> Each(Candidate found, JobPacking packing)
    {
        for (var i = 0; i < found.Packed.Boxes.Count; i++)
        {
            var unit = found.Design.Switches[i];
            var box = packing.Boxes[found.Packed.Boxes[i].Box];
            if (found.Ledger.Entries.FirstOrDefault(entry => entry.Subject == unit.Id && entry is { Discipline: "power", Quantity: "watts" }) is not { Demand: { } demand, Limit: { } limit } watts)
                continue;
            var set = box.Setting.Limits ? "with a limit at each port" : box.Setting.By is { } by ? $"to reserve by {Name(by)}" : "as it comes";
            var refused = watts.Beside.Where(row => row.Group == "setting" && row.Demand > limit && !row.Note.Contains("not offered", StringComparison.Ordinal)).Select(row => row.Name).ToList();
            var others = refused.Count == 0 ? "no other setting that it offers would refuse anything" : $"it would not do: {string.Join("; ", refused)}";
            yield return (unit.Id, $"{set}: at its most it sets {PlanWords.Of(demand)} W of {PlanWords.Of(limit)} aside; {others}");
        }
    }

    /// <summary>The name of a way of reserving, as the job file has it.</summary>
    public static string Name(ReservesBy by) => by switch
    {
        ReservesBy.PortLimit => "port-limit",
        ReservesBy.Negotiated => "negotiated",
        ReservesBy.Measured => "measured",
        ReservesBy.Autoclass => "autoclass",
        _ => "class",
    };
}

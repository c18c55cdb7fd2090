using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>The house rules.</summary>
internal static class PolicyFields
{
    // A reserve of more than nine tenths leaves nothing to work with; growth may well be more than double.
    private const double MostReserve = 0.9;
    private const double MostGrowth = 10;

    private static readonly Field<Reserve>[] Kinds = [.. Policy.Kinds.Select(kind => Kind(kind.Key, kind.Value))];

    private static readonly Field<Reserve>[] Ports =
    [
        new("powered ports", new ReserveShape(ReserveKinds.Ports, "ports", MostGrowth), "How many powered ports are to be added over the years.", "20 %"),
        new("all ports", new ReserveShape(ReserveKinds.Ports, "ports", MostGrowth), "How many ports are to be added over the years.", "4"),
    ];

    private static readonly Field<IReadOnlyDictionary<string, Reserve>> Reserve = new(
        "reserve",
        new ObjectShape<IReadOnlyDictionary<string, Reserve>>("reserve", Kinds, values => Known(values, Kinds)),
        "What is to stay free of each kind of limit; without it a fifth of power, ports, rack and weight, three tenths of uplink and port speed, and nothing of the others.",
        "{power: 20 %, ports: 2}");

    private static readonly Field<IReadOnlyDictionary<string, Reserve>> Growth = new(
        "growth",
        new ObjectShape<IReadOnlyDictionary<string, Reserve>>("growth", Ports, values => Known(values, Ports)),
        "What is to be added over the years.",
        "{powered ports: 20 %, all ports: 4}");

    private static readonly Field<DateOnly> PricesAsOf = new("prices-as-of", Shapes.Day, "The day on which the prices were right.", "2026-11-20");

    private static readonly Field<Given<Share>> CableWaste = new("cable waste", () => Sensible.Waste, "What is bought beyond the measured lengths of cable; 10 % without it.", "10 %");

    private static readonly Field<Given<Share>> CallsLost = new("calls lost", () => Sensible.CallsLost, "Share of calls that may find no way out in the busy hour; 1 % without it.", "1 %");

    /// <summary>The policy.</summary>
    public static ObjectShape<Policy> Shape { get; } = new("policy", [Reserve, Growth, PricesAsOf, CableWaste, CallsLost, OutageFields.Outage, FailureFields.Failures, YearsFields.Years], values => new Policy(
        values.Get(Reserve) ?? Policy.None.Reserves,
        values.Get(Growth) ?? Policy.None.Growth,
        values.Maybe(PricesAsOf),
        values.At)
    {
        CableWaste = values.Get(CableWaste),
        Outage = values.Get(OutageFields.Outage) ?? OutagePolicy.None,
        CallsLost = values.Get(CallsLost),
        Failures = values.Get(FailureFields.Failures),
        Years = values.Get(YearsFields.Years),
    });

    private static Field<Reserve> Kind(string kind, string unit)
    {
        var units = ReserveKinds.Units.GetValueOrDefault(kind);
        var example = units is null || Policy.AFifthByDefault.Contains(kind) ? "20 %" : $"2 {unit}";
        return new Field<Reserve>(kind, new ReserveShape(units, unit, MostReserve), $"What is to stay free of every limit of the kind '{kind}'.", example);
    }

    private static Dictionary<string, Reserve> Known(Values values, Field<Reserve>[] fields) =>
        fields.Where(values.Has).ToDictionary(field => field.Name, values.Must);
}

using Headroom.Documents.Papers;
using Headroom.Domain.Plans;

namespace Headroom.Documents.Tests.Drawings;

/// <summary>Plans and turning points by hand, as the planner hands them over; every figure is invented.</summary>
internal static class PlannedDrawings
{
    public static PaperInput Of(PaperInput input) => input with { Plan = Plan(input), Turns = Turns };

    private static IReadOnlyList<TurningPoint> Turns { get; } =
    [
        new("draw:bulrush", "what each bulrush draws at its most", "W", 12.8, true, 17.3, 71, "1 wren-b, 1 holm", 1210.50m, "1 redshank, 1 holm", 1388m, true, []),
        new("draw:bulrush", "what each bulrush draws at its most", "W", 12.8, false, null, 1.3, "1 wren-b, 1 holm", 1210.50m, null, null, true, []),
        new("runtime", "how long standby supplies must hold", "min", 15, true, 22.5, 120, "1 wren-b, 1 holm", 1210.50m, null, null, false, []),
        new("noise:desk", "what desk may hear", "dB(A)", 41, true, null, 70, "1 wren-b, 1 holm", 1210.50m, null, null, false, []),
        new("noise:desk", "what desk may hear", "dB(A)", 41, false, 38.4, 10, "1 wren-b, 1 holm", 1210.50m, null, null, true, []),
    ];

    private static Plan Plan(PaperInput input) => new(input.Job.Name, input.Ledger.On, [], [],
    [
        .. Enumerable.Range(0, 14).Select(i => new FrontPoint($"{1 + i % 3} wren-b, {i} redshank with the large supply, 2 midspans and what goes between them", 900 + 17 * i * i, i == 5 ? null : 44 - 1.1 * i, 3 + i, i)),
    ]);
}

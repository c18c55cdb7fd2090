using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;

namespace Headroom.Planning.Jobs;

/// <summary>What a standby supply has to feed at the least, whatever hangs where: bounds from below, so that nothing is left out that would do.</summary>
internal static class FeedWatts
{
    private static readonly string[] Lasting = ["typical", "night", "frost"];

    /// <summary>What a switch takes with nothing plugged in, at the best efficiency of its supply [mW].</summary>
    public static long OfBox(SwitchModel model, SupplyModel? supply) => (long)Math.Floor((model.BaseWatts?.Value.Value ?? 0) * 1000 / Best(supply));

    /// <summary>What the endpoints that only one place reaches take in the state of those that last that asks most, at the best efficiency there is [W].</summary>
    public static double OfPorts(IReadOnlyList<EndpointKind> kinds, int place, IReadOnlyList<SupplyModel?> supplies)
    {
        var best = supplies.Select(Best).DefaultIfEmpty(1).Max();
        var only = kinds.Where(kind => kind is { TakesPower: true, IsGrowth: false, Places: [var one] } && one == place).ToList();
        return Lasting.Max(state => only.Sum(kind => kind.Count * (Draw(kind, state) ?? 0))) / best;
    }

    private static double? Draw(EndpointKind kind, string state) => kind.Worst.Mode is { } mode ? Named(kind, mode)
        : state == "frost" ? Named(kind, "frost") ?? Draw(kind, "night")
        : state == "night" ? Named(kind, "night") ?? Named(kind, "typical")
        : Named(kind, "typical");

    private static double? Named(EndpointKind kind, string name) =>
        (kind.Worst.Draws.TryGetValue(name, out Given<Watts>? own) ? own : kind.Model.Draws.GetValueOrDefault(name))?.Value.Value;

    private static double Best(SupplyModel? supply) => supply?.Efficiency is { Count: > 0 } points ? points.Max(point => point.Efficiency.Value.Value) : 1;
}

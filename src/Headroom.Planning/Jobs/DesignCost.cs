using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>What a design costs of what a plan decides.</summary>
internal static class DesignCost
{
    /// <summary>The cost; null when a price is missing.</summary>
    public static PlanCost? Of(Design design, Catalogue catalogue, UnitPrices prices, IReadOnlyDictionary<string, int> owned)
    {
        var parts = new List<PlanCost?>();
        var left = owned.ToDictionary(pair => pair.Key, pair => pair.Value);
        foreach (var unit in design.Switches)
        {
            var model = catalogue.Switches[unit.Model!];
            var isOwned = left.GetValueOrDefault(model.Id) > 0;
            if (isOwned)
                left[model.Id]--;
            parts.Add(prices.Of(model, SupplyOf(model, unit.Supply), isOwned));
        }

        parts.AddRange(design.Injectors.Select(unit => prices.Of(catalogue.Injectors[unit.Model!])));
        parts.AddRange(design.Standby.Select(unit => prices.Of(catalogue.Standby[unit.Model!])));
        parts.AddRange(Modules(design).Select(module => catalogue.Modules.TryGetValue(module, out var model) ? prices.Of(model) : null));
        return parts.Contains(null) ? null : parts.Aggregate(new PlanCost(0, 0, 0, 0, prices.Currency), (sum, part) => Sum(sum, part!));
    }

    /// <summary>What is bought, in words.</summary>
    public static string Bought(Design design, Catalogue catalogue)
    {
        var switches = design.Switches.Select(unit => catalogue.Switches[unit.Model!].Supplies.Count > 1 ? $"{unit.Model}, supply {unit.Supply ?? catalogue.Switches[unit.Model!].Supplies[0].Id}" : unit.Model!);
        return PlanWords.Counted([.. switches, .. design.Injectors.Select(unit => unit.Model!), .. design.Standby.Select(unit => unit.Model!)]);
    }

    /// <summary>The supply of a name; the first without one.</summary>
    public static SupplyModel? SupplyOf(SwitchModel model, string? name) =>
        name is null ? model.Supplies.Count > 0 ? model.Supplies[0] : null : model.Supplies.FirstOrDefault(supply => supply.Id == name);

    // One at each end inside the job; what lies outside is somebody else's.
    private static IEnumerable<string> Modules(Design design)
    {
        foreach (var uplink in design.Uplinks ?? [])
        {
            if (uplink.Module is { } near)
                yield return near;
            if (uplink.To.Port is not null && uplink.Media != "direct" && (uplink.FarModule ?? uplink.Module) is { } far)
                yield return far;
        }
    }

    /// <summary>Two costs together.</summary>
    public static PlanCost Sum(PlanCost one, PlanCost other) => new(
        one.Goods + other.Goods, one.Labour + other.Labour, one.Energy + other.Energy, one.Swaps + other.Swaps, one.Currency);
}

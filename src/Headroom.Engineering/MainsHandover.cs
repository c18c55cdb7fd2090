using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Money;
using Headroom.Engineering.Power;

namespace Headroom.Engineering;

/// <summary>What the studies of power and of the cables hand on to those of racks and of money.</summary>
internal static class MainsHandover
{
    /// <summary>What a unit takes from the mains at its most [W]; null when not known.</summary>
    public static double? MostWatts(PowerResult power, string id) =>
        power.Switches.FirstOrDefault(s => s.Switch.Id == id) is { } unit ? unit.Supply.Worst?.MainsWatts : OfInjector(power, id);

    /// <summary>What the study of money takes over.</summary>
    public static MoneyNeeds Needs(BoundDesign bound, PowerResult power)
    {
        double? watts = 0;
        foreach (var unit in power.Switches)
            watts += unit.Supply.Typical?.MainsWatts;
        foreach (var injector in power.Injectors)
            watts += OfInjector(power, injector.Injector.Id);
        return new MoneyNeeds([.. CableTotals.Of(bound).Select(total => new LaidCable(total.Cable, total.Metres, total.NotKnown))], watts);
    }

    // An injector's supply is judged by its lowest efficiency: it is small, and its load is all there is to it.
    private static double? OfInjector(PowerResult power, string id)
    {
        var injector = power.Injectors.FirstOrDefault(one => one.Injector.Id == id);
        if (injector is null || injector.Known < injector.Ports.Count)
            return null;
        return injector.DemandWatts / Lowest(injector.Injector.Model.Supply);
    }

    private static double? Lowest(SupplyModel supply)
    {
        double? lowest = null;
        foreach (var point in supply.Efficiency)
            lowest = Math.Min(lowest ?? 1, point.Efficiency.Value.Value);
        return lowest;
    }
}

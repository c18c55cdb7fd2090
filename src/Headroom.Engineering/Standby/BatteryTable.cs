using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>What is known of how long the battery of a supply holds, as one table for all of it.</summary>
/// <param name="Table">The table of the whole battery, new, at 25 °C.</param>
/// <param name="AtOutput">True when its watts are those at the output of the supply, false for those at the battery.</param>
/// <param name="Spread">How far such a table may be off, as a share of its watts [1].</param>
/// <param name="IsLithium">True for lithium, false for lead.</param>
/// <param name="Origin">Where it comes from, in words.</param>
/// <param name="Rough">True when it follows a law and no table was written.</param>
public sealed record BatteryTable(DischargeTable Table, bool AtOutput, double Spread, bool IsLithium, string Origin, bool Rough)
{
    // Published tables of two other blocks, scaled by capacity, lay within 8 to 11 % of a third.
    private const double TableSpread = 0.1;
    private const double RoughSpread = 0.3;

    // 1.1 to 1.3 for sealed lead, from memory; capacity taken for 20 hours, as it is printed.
    private const double LeadExponent = 1.2;
    private const double RateHours = 20;

    /// <summary>The table of a supply: its blocks', else the minutes declared for it, else by a law from capacity.</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="block">The block in it; null when not known.</param>
    /// <returns>The table; null when nothing is known that would do.</returns>
    public static BatteryTable? Of(StandbyModel supply, BatteryModel? block)
    {
        var lithium = block?.Chemistry == "lithium";
        if (block is { Discharge.Count: >= 2 } && supply.Blocks is { } blocks)
            return new(From(block.Discharge).Times(blocks), false, TableSpread, lithium, $"{blocks} blocks {block.Id}, {Origins.Of(block.Discharge[0].Load)}", false);
        if (supply.Runtime.Count >= 2)
            return new(From(supply.Runtime), true, TableSpread, lithium, $"minutes declared for {supply.Id}, {Origins.Of(supply.Runtime[0].Load)}", false);
        return block?.Capacity is { } capacity && supply.Blocks is { } count
            ? new(ByLaw((lithium, block.Nominal.Value.Value, capacity.Value.Value)).Times(count), false, RoughSpread, lithium, $"by a law from the capacity of {count} blocks {block.Id}, rough", true)
            : null;
    }

    private static DischargeTable From(IReadOnlyList<RuntimePoint> points)
    {
        var (seconds, watts) = (new double[points.Count], new double[points.Count]);
        for (var i = 0; i < points.Count; i++)
            (seconds[i], watts[i]) = (points[i].Lasts.Value.Value, points[i].Load.Value.Value);
        // A supply's minutes are kept by rising watts, a block's by rising time.
        if (seconds[0] > seconds[^1])
        {
            Array.Reverse(seconds);
            Array.Reverse(watts);
        }

        return new(seconds, watts);
    }

    private static DischargeTable ByLaw((bool Lithium, double Volts, double AmpereHours) block)
    {
        double[] seconds = block.Lithium ? [360, 360_000] : [600, 72_000];
        return new(seconds, Array.ConvertAll(seconds, lasts => block.Lithium
            ? block.Volts * block.AmpereHours * LithiumRuntime.UsualDepth * 3600 / lasts
            : block.Volts * block.AmpereHours / RateHours * Math.Pow(RateHours * 3600 / lasts, 1 / LeadExponent)));
    }
}

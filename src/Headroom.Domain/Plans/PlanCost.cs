namespace Headroom.Domain.Plans;

/// <summary>What a design costs of what a plan decides: units, modules and what goes between; not endpoints, cables and panels, which every design needs.</summary>
/// <param name="Goods">What the goods cost.</param>
/// <param name="Labour">What the work on them costs; 0 where no hour has a cost.</param>
/// <param name="Energy">What the units draw by themselves over the years, in money of today; 0 where energy has no price.</param>
/// <param name="Swaps">What units replaced over the years cost, as expected from their declared failures; 0 where no years are written.</param>
/// <param name="Currency">The three-letter code.</param>
public sealed record PlanCost(decimal Goods, decimal Labour, decimal Energy, decimal Swaps, string Currency)
{
    /// <summary>All together: what is made as small as possible.</summary>
    public decimal Total => Goods + Labour + Energy + Swaps;
}

namespace Headroom.Engineering.Money;

/// <summary>What a job took and brought, in one currency; null is what nobody knows.</summary>
/// <param name="Hours">Hours worked in all.</param>
/// <param name="HourCost">What an hour costs the firm.</param>
/// <param name="Material">What the goods cost in the end.</param>
/// <param name="Visits">What going there cost besides hours.</param>
public sealed record AfterwardsParts(decimal? Hours, decimal? HourCost, decimal? Material, decimal? Visits)
{
    /// <summary>The price as offered, without tax.</summary>
    public decimal? Offered { get; init; }

    /// <summary>What was charged for what was ordered on the way.</summary>
    public decimal? VariationPrice { get; init; }

    /// <summary>What that cost.</summary>
    public decimal? VariationCost { get; init; }
}

namespace Headroom.Engineering.Remedies;

/// <summary>What a remedy costs the firm more than the design as it is, both reckoned as not yet built.</summary>
/// <param name="Parts">Goods more, below zero when fewer; null when not known.</param>
/// <param name="Labour">Work more; null when not known.</param>
/// <param name="Currency">The currency of both.</param>
/// <param name="NotKnown">What is not known, in words; null when nothing.</param>
public sealed record RemedyCost(decimal? Parts, decimal? Labour, string Currency, string? NotKnown)
{
    /// <summary>Both together; null when one is not known.</summary>
    public decimal? Amount => Parts + Labour;
}

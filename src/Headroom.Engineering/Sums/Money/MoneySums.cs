namespace Headroom.Engineering.Sums.Money;

/// <summary>The sums of money. They are worked out in decimals; amounts are of any currency and stand without it.</summary>
internal static class MoneySums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "money";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All => [PriceAtMargin.Sum, MarginOfMarkUp.Sum, YearOfEnergy.Sum, CostOfOwning.Sum];
}

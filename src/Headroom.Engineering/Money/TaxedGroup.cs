namespace Headroom.Engineering.Money;

/// <summary>Lines of an offer that are taxed alike.</summary>
/// <param name="Name">The name of the group; empty when the offer has no tax.</param>
/// <param name="Rate">The tax as a share.</param>
/// <param name="Lines">The sum of its lines.</param>
/// <param name="Discount">What is taken off them, 0 or more.</param>
/// <param name="Tax">The tax on what is left.</param>
public sealed record TaxedGroup(string Name, decimal Rate, decimal Lines, decimal Discount, decimal Tax)
{
    /// <summary>What is taxed.</summary>
    public decimal Base => Lines - Discount;
}

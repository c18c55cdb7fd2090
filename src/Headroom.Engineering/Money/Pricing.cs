using Headroom.Domain.Quantities;
using Amount = Headroom.Domain.Quantities.Money;

namespace Headroom.Engineering.Money;

/// <summary>Makes prices of costs.</summary>
/// <param name="Currency">The currency of the offer.</param>
/// <param name="Margin">What is to remain of a price; null when not written.</param>
/// <param name="Terms">How amounts are rounded.</param>
internal sealed record Pricing(string Currency, decimal? Margin, QuoteTerms Terms)
{
    /// <summary>An amount in the currency of the offer; null when it is not known or in another: the program changes no money.</summary>
    public decimal? Of(Given<Amount>? price) => price is { } given && given.Value.Currency == Currency ? given.Value.Amount : null;

    /// <summary>The price of a line that costs so much; null when cost or margin is not known.</summary>
    public decimal? Net(decimal? cost) => cost is { } known && Margin is { } margin ? Round(Margins.Price(known, margin)) : null;

    /// <summary>An amount that can be paid.</summary>
    public decimal Round(decimal amount) => Rounding.Of(amount, Terms.Places, Terms.Ties);
}

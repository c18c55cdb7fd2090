using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
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

    /// <summary>What a model costs the firm: what the job says, else what the catalogue says.</summary>
    public static Given<Amount>? PriceOf(Job job, Body body)
    {
        for (var at = job.Prices.Count - 1; at >= 0; at--)
        {
            if (job.Prices[at].Model == body.Id)
                return job.Prices[at].Cost;
        }

        return body.Price;
    }

    /// <summary>The price of a line that costs so much; null when cost or margin is not known.</summary>
    public decimal? Net(decimal? cost) => cost is { } known && Margin is { } margin ? Round(Margins.Price(known, margin)) : null;

    /// <summary>An amount that can be paid.</summary>
    public decimal Round(decimal amount) => Rounding.Of(amount, Terms.Places, Terms.Ties);
}

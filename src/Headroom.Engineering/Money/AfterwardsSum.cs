using Amount = Headroom.Domain.Quantities.Money;

namespace Headroom.Engineering.Money;

/// <summary>What a job made in the end.</summary>
/// <param name="Hours">Hours worked; null when not written.</param>
/// <param name="Revenue">The offer without tax, and what was ordered on the way; null when a price is not known.</param>
/// <param name="Cost">Hours, material, visits, variations; null when one is not known.</param>
/// <param name="Question">What is missing; null when nothing.</param>
public sealed record AfterwardsSum(decimal? Hours, decimal? Revenue, decimal? Cost, string? Question)
{
    /// <summary>What remained of the price, as a share; null when something is not known.</summary>
    public decimal? Margin => Revenue is { } revenue && Cost is { } cost ? Margins.Of(cost, revenue) : null;

    /// <summary>Adds it up. Source: arithmetic.</summary>
    /// <param name="result">The offer.</param>
    /// <returns>What the job made; null before it is done.</returns>
    public static AfterwardsSum? Of(MoneyResult result)
    {
        if (result.Terms.Afterwards is not { } after)
            return null;
        decimal? In(Headroom.Domain.Quantities.Given<Amount>? price) => price is { } given && given.Value.Currency == result.Currency ? given.Value.Amount : null;
        var hours = (decimal?)after.Hours?.Value.Value / 3600;
        var hour = In(result.Terms.Labour?.HourCost);
        decimal? visits = after.Visits is { } count ? count * (In(after.Visit) ?? 0) : 0;
        decimal? variationCost = 0, variationPrice = 0;
        foreach (var variation in after.Variations)
        {
            variationCost += variation.Count * In(variation.Cost);
            variationPrice += variation.Count * In(variation.Price);
        }

        var offered = result.NotKnown.Any(line => line.Net is null) ? null : (decimal?)result.Offer.Net;
        var question = hours is null ? "how many hours did it take?" : hour is null ? "what does an hour cost? write 'hour cost'"
            : In(after.Material) is null ? "what did the goods cost in the end?" : variationCost is null || variationPrice is null ? "what did each variation cost, and what was charged?" : result.NotKnown.FirstOrDefault(line => line.Net is null)?.Question;
        return Of(new AfterwardsParts(hours, hour, In(after.Material), visits) { Offered = offered, VariationPrice = variationPrice, VariationCost = variationCost }, question);
    }

    /// <summary>Adds up what is known of a job. Source: arithmetic.</summary>
    /// <param name="parts">What it took and brought, in one currency.</param>
    /// <param name="question">What is missing; null when nothing.</param>
    /// <returns>What the job made; null stays null.</returns>
    public static AfterwardsSum Of(AfterwardsParts parts, string? question) =>
        new(parts.Hours, parts.Offered + parts.VariationPrice, parts.Hours * parts.HourCost + parts.Material + parts.Visits + parts.VariationCost, question);
}

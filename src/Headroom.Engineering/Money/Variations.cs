namespace Headroom.Engineering.Money;

/// <summary>What was ordered on the way, as lines behind those of the offer.</summary>
public static class Variations
{
    /// <summary>The lines; null before the job is done. One whose price nobody wrote has none.</summary>
    /// <param name="result">The offer.</param>
    public static IReadOnlyList<PricedLine>? Of(MoneyResult result) => result.Terms.Afterwards is not { } after ? null :
    [
        .. after.Variations.Select(one => new PricedLine(
            one.What, one.Count, "", one.Count * In(result, one.Cost),
            In(result, one.Price) is { } price ? Rounding.Of(one.Count * price, result.Offer.Terms.Places, result.Offer.Terms.Ties) : null, one.Tax, null)
        { Question = In(result, one.Price) is null ? $"what was charged for {one.What}?" : null, Origin = one.At.ToString() }),
    ];

    /// <summary>The offer and what was ordered on the way together; null before the job is done, or while a price is not known.</summary>
    /// <param name="result">The offer.</param>
    public static Quote? Whole(MoneyResult result) =>
        Of(result) is { } lines && lines.All(line => line.Net is not null) && !result.NotKnown.Any(line => line.Net is null) ? result.Offer.With(lines) : null;

    private static decimal? In(MoneyResult result, Headroom.Domain.Quantities.Given<Headroom.Domain.Quantities.Money>? price) =>
        price is { } given && given.Value.Currency == result.Currency ? given.Value.Amount : null;
}

using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Money;

/// <summary>Everything the study of money worked out.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Terms">What the firm charges and wants to keep.</param>
/// <param name="Currency">The currency of the offer.</param>
/// <param name="Lines">All lines, those of options and those without a price too.</param>
/// <param name="Offer">The offer itself, without options.</param>
/// <param name="Labour">Its labour; null when none is offered.</param>
/// <param name="Needs">What the studies before it found.</param>
public sealed record MoneyResult(BoundDesign Bound, MoneyTerms Terms, string Currency, IReadOnlyList<PricedLine> Lines, Quote Offer, LabourSum? Labour, MoneyNeeds Needs)
{
    /// <summary>Lines of the offer itself of which price or cost is not known.</summary>
    public IReadOnlyList<PricedLine> NotKnown { get; } = [.. Lines.Where(line => line.Option is null && (line.Net is null || line.Cost is null))];

    /// <summary>What is put aside for coming back.</summary>
    public decimal CallBacks => (decimal)(Terms.Labour?.CallBacks?.Value.Value ?? 0) * Lines.Where(line => line is { IsLabour: true, Option: null }).Sum(line => line.Cost ?? 0);

    /// <summary>What the offer costs the firm, with what is put aside.</summary>
    public decimal Cost => Offer.Cost + CallBacks;

    /// <summary>What remains of the price, as a share of it; null without a price.</summary>
    public decimal? Margin => Margins.Of(Cost, Offer.Net);

    /// <summary>The options, each added up by itself.</summary>
    public IEnumerable<(string Name, Quote Quote)> Options =>
        Lines.Where(line => line.Option is not null).GroupBy(line => line.Option!).Select(group => (group.Key, Quote.Of(group, Offer.Terms)));
}

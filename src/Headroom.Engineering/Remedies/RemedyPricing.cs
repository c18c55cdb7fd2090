using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Remedies;

/// <summary>Prices remedies by the lines of the offer: those of the design as it is against those of the changed one.</summary>
internal sealed class RemedyPricing
{
    private readonly MoneyTerms _terms;
    private readonly Dictionary<string, PricedLine> _before;
    private readonly string _currency;

    /// <summary>Prices the design as it is.</summary>
    public RemedyPricing(BoundDesign before)
    {
        _terms = before.Job.Money ?? new MoneyTerms(null, null, null, [], false, TieRule.Away, null, Place.None);
        var offer = Offer(before);
        (_before, _currency) = (ByName(offer), offer.Currency);
    }

    /// <summary>What a remedy costs more.</summary>
    /// <param name="after">The changed design, bound.</param>
    /// <param name="idea">What is done.</param>
    public RemedyCost Of(BoundDesign after, RemedyIdea idea)
    {
        var lines = ByName(Offer(after));
        decimal? parts = idea.Unpriced is null ? 0 : null;
        decimal? labour = 0;
        string? missing = idea.Unpriced;
        foreach (var name in _before.Keys.Union(lines.Keys))
        {
            var (was, now) = (_before.GetValueOrDefault(name), lines.GetValueOrDefault(name));
            if (was?.Count == now?.Count && was?.Cost == now?.Cost)
                continue;
            decimal? more = was is { Cost: null } || now is { Cost: null } ? null : (now?.Cost ?? 0) - (was?.Cost ?? 0);
            if (more is null)
                missing ??= (now ?? was)!.Question ?? $"what {name} costs";
            if ((now ?? was)!.IsLabour)
                labour += more;
            else
                parts += more;
        }

        foreach (var price in idea.Goods)
        {
            var known = price?.Value.Currency == _currency ? price.Value.Amount : (decimal?)null;
            parts += known;
            missing ??= known is null ? $"what a part of it costs in {_currency}" : null;
        }

        var extra = Extra(idea);
        if (extra is null)
            missing ??= "what an hour costs";
        return new RemedyCost(parts, labour + extra, _currency, missing);
    }

    // A setting is made when the thing is set up, whichever it is; other work that no task covers takes the hours it takes.
    private decimal? Extra(RemedyIdea idea)
    {
        if (idea.BuysNothing || idea.Minutes.High == 0)
            return 0;
        var hour = _terms.Labour?.HourCost is { } cost && cost.Value.Currency == _currency ? cost.Value.Amount : (decimal?)null;
        var factor = _terms.Labour?.Difficulty is { } site ? Guess.Mean(site) : 1;
        return hour is null ? null : Math.Round(hour.Value * factor * (idea.Minutes.Low + idea.Minutes.High) / 2 / 60, 2, MidpointRounding.AwayFromZero);
    }

    private MoneyResult Offer(BoundDesign bound) => MoneyStudy.Of(
        bound.Job.Money is null ? bound with { Job = bound.Job with { Money = _terms } } : bound,
        new MoneyNeeds([.. CableTotals.Of(bound).Select(total => new LaidCable(total.Cable, total.Metres, total.NotKnown))], null))!;

    // Two lines of one name are two drops whose length nobody knows, or options: the first will do, as both stand on either side.
    private static Dictionary<string, PricedLine> ByName(MoneyResult offer)
    {
        var lines = new Dictionary<string, PricedLine>();
        foreach (var line in offer.Lines.Where(line => line.Option is null))
            lines.TryAdd(line.IsLabour ? "labour" : line.What, line);
        return lines;
    }
}

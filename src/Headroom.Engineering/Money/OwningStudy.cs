using Amount = Headroom.Domain.Quantities.Money;

namespace Headroom.Engineering.Money;

/// <summary>Energy and batteries over the years.</summary>
internal sealed class OwningStudy(MoneyResult result)
{
    private const double SecondsOfAYear = 31557600;

    /// <summary>The first thing that is missing; null when nothing.</summary>
    public string? Question { get; private set; }

    /// <summary>Energy of a year; null when draw or price is not known.</summary>
    public decimal? EnergyAYear { get; private set; }

    /// <summary>Battery changes, by year.</summary>
    public List<(int Year, decimal Amount, string Unit)> Changes { get; } = [];

    /// <summary>Works it out; null when something is missing.</summary>
    public Owning? Find()
    {
        var terms = result.Terms.Owning!;
        Energy();
        foreach (var standby in result.Bound.Design.Standby)
            Batteries(standby, terms.Years);
        if (result.NotKnown.FirstOrDefault(line => line.Net is null)?.Question is { } question)
            Question ??= question;
        return Question is null && EnergyAYear is { } energy
            ? new Owning(result.Offer.Gross, energy, [.. Changes.Select(change => (change.Year, change.Amount))], (decimal)(terms.Interest?.Value.Value ?? 0), terms.Years)
            : null;
    }

    private void Energy()
    {
        if (Of(result.Terms.Owning!.Energy) is not { } each)
            Question ??= "what does a kilowatt-hour cost? write 'energy'";
        else if (result.Needs.MainsWatts is not { } watts)
            Question ??= "what do the units take from the mains? the study of power says what is missing";
        else
            EnergyAYear = Money.Energy.KilowattHoursAYear(watts) * each;
    }

    private void Batteries(Headroom.Domain.Jobs.PlacedStandby standby, int years)
    {
        var catalogue = result.Bound.Catalogue;
        if (standby.Model is null || !catalogue.Standby.TryGetValue(standby.Model, out var model))
            return;
        var block = model.Battery is { } name ? catalogue.Batteries.GetValueOrDefault(name) : null;
        if (block?.Life is not { } life || model.Blocks is not { } blocks || Of(Pricing.PriceOf(result.Bound.Job, block.Body)) is not { } price)
        {
            Question ??= $"how long do the batteries of {standby.Id} live, and what does a block cost?";
            return;
        }

        var each = life.Value.Value / SecondsOfAYear;
        // Those that are there already are older: their change comes earlier. A change at the end of the last year is not made.
        for (var at = each - (standby.BatteryAge?.Value.Value ?? 0) / SecondsOfAYear; at < years - 1e-9; at += Math.Max(each, 0.5))
            Changes.Add(((int)Math.Ceiling(Math.Max(at, 0.01)), blocks * price + (Of(result.Terms.Owning!.BatteryVisit) ?? 0), standby.Id));
    }

    private decimal? Of(Headroom.Domain.Quantities.Given<Amount>? price) => price is { } given && given.Value.Currency == result.Currency ? given.Value.Amount : null;
}

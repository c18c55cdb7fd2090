using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Domain.Quantities;

namespace Headroom.Planning.Jobs;

/// <summary>What a unit costs the firm over the years, as far as the job says what counts: purchase, labour, energy, expected swaps.</summary>
internal sealed class UnitPrices
{
    private const decimal HoursAYear = 8766;

    private readonly Job _job;
    private readonly OwningTerms? _owning;

    /// <summary>Prices of a job.</summary>
    public UnitPrices(Job job, Catalogue catalogue)
    {
        _job = job;
        _owning = job.Money?.Owning;
        Currency = job.Client?.Currency ?? catalogue.Switches.Values.Select(model => model.Body.Price?.Value.Currency).FirstOrDefault(currency => currency is not null) ?? "EUR";
    }

    /// <summary>The currency in which all is counted; what costs in another is not known.</summary>
    public string Currency { get; }

    /// <summary>What a model costs; null when not known.</summary>
    public decimal? PriceOf(Body body)
    {
        if (_job.Money?.LeaveOut.Contains(body.Id) == true)
            return 0;
        return Of(_job.Prices.LastOrDefault(price => price.Model == body.Id)?.Cost ?? body.Price);
    }

    /// <summary>What a switch with a supply costs; null when not known.</summary>
    public PlanCost? Of(SwitchModel model, SupplyModel? supply, bool owned)
    {
        var extra = supply is null || supply == model.Supplies[0] ? Of(supply?.Price) ?? 0 : Of(supply.Price);
        if (PriceOf(model.Body) is not { } body || extra is null)
            return owned ? Whole(0, "switch", model.Body, Energy(model, supply)) : null;
        return Whole(owned ? 0 : body + extra.Value, "switch", model.Body, Energy(model, supply));
    }

    /// <summary>What an injector costs; null when not known.</summary>
    public PlanCost? Of(InjectorModel model) => PriceOf(model.Body) is { } price ? Whole(price, "injector", model.Body, 0) : null;

    /// <summary>What a standby supply costs; null when not known.</summary>
    public PlanCost? Of(StandbyModel model) => PriceOf(model.Body) is { } price ? Whole(price, "standby supply", model.Body, 0) : null;

    /// <summary>What a module costs; null when not known.</summary>
    public PlanCost? Of(ModuleModel model) => PriceOf(model.Body) is { } price ? new PlanCost(price, 0, 0, 0, Currency) : null;

    /// <summary>An amount in the smallest coin.</summary>
    public static long Coins(PlanCost cost) => (long)Math.Round(cost.Total * 100, MidpointRounding.AwayFromZero);

    private PlanCost Whole(decimal goods, string task, Body body, decimal energy)
    {
        var labour = Labour(task);
        return new(goods, labour, energy, Swaps(body, PriceOf(body) ?? goods, labour), Currency);
    }

    private decimal? Of(Given<Money>? price) => price is { } given && given.Value.Currency == Currency ? given.Value.Amount : null;

    // Minutes as the offer expects them, times what the site adds, times what an hour costs.
    private decimal Labour(string task)
    {
        if (_job.Money?.Labour is not { HourCost: { } hour } labour || !labour.Tasks.TryGetValue(task, out var minutes))
            return 0;
        var factor = labour.Difficulty is { } difficulty ? Mean(difficulty) : 1;
        return decimal.Round(Mean(minutes) * factor * hour.Value.Amount / 60, 2);
    }

    private static decimal Mean(ThreePoint guess) => (guess.Low + 4 * guess.Likely + guess.High) / 6;

    // What it draws by itself all year; what its ports draw is the same in every design, but for the losses.
    private decimal Energy(SwitchModel model, SupplyModel? supply)
    {
        if (_owning is not { Energy: { } price } owning || model.BaseWatts is not { } watts)
            return 0;
        var efficiency = supply?.Efficiency is { Count: > 0 } points ? points.Max(point => point.Efficiency.Value.Value) : 1;
        return decimal.Round((decimal)(watts.Value.Value / efficiency) / 1000 * HoursAYear * price.Value.Amount * Years(owning), 2);
    }

    private decimal Swaps(Body body, decimal price, decimal labour) => _owning is { } owning && body.BetweenFailures is { } between
        ? decimal.Round((price + labour) * owning.Years * HoursAYear * 3600 / (decimal)between.Value.Value, 2)
        : 0;

    // Years in money of today. Source: uniform present value, NIST Handbook 135.
    private static decimal Years(OwningTerms owning)
    {
        var interest = owning.Interest?.Value.Value ?? 0;
        return interest == 0 ? owning.Years : (decimal)((1 - Math.Pow(1 + interest, -owning.Years)) / interest);
    }
}

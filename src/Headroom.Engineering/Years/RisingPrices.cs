using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Amount = Headroom.Domain.Quantities.Money;

namespace Headroom.Engineering.Years;

/// <summary>Lets prices of a copy of a site rise: the offer of today, made in some years. What the client would pay does not rise.</summary>
internal static class RisingPrices
{
    /// <summary>The site with prices of then.</summary>
    public static LaterSite To(LaterSite site, double years)
    {
        if (site.Job.Money is not { } money || site.Job.Policy.Years is not { } policy)
            return site;
        var goods = Rise(policy.Prices, years);
        var design = site.Design with { Fittings = [.. site.Design.Fittings.Select(fitting => fitting with { Price = Times(fitting.Price, goods) })] };
        var job = site.With(design, site.Job.Survey).Job;
        return site with
        {
            Design = design,
            Job = job with { Prices = [.. UsedModels.Of(site).Select(used => new Price(used.Id, Times(used.Price, goods)!, null, null, null, used.At))], Money = Dearer(money, policy, years) },
        };
    }

    private static MoneyTerms Dearer(MoneyTerms money, YearsPolicy policy, double years)
    {
        var (goods, wages) = (Rise(policy.Prices, years), Rise(policy.Wages, years));
        return money with
        {
            Each = money.Each.ToDictionary(each => each.Key, each => Times(each.Value, goods)!),
            Lines = [.. money.Lines.Select(line => line with { Cost = Times(line.Cost, goods), Price = Times(line.Price, goods) })],
            Labour = money.Labour is not { } labour ? null : labour with { HourCost = Times(labour.HourCost, wages), HourPrice = Times(labour.HourPrice, wages) },
            Owning = money.Owning is not { } owning ? null : owning with { Energy = Times(owning.Energy, Rise(policy.Energy, years)), BatteryVisit = Times(owning.BatteryVisit, wages) },
        };
    }

    private static decimal Rise(Given<Share>? yearly, double years) => (decimal)Math.Pow(1 + (yearly?.Value.Value ?? 0), years);

    private static Given<Amount>? Times(Given<Amount>? price, decimal times) => price is null ? null : price with { Value = price.Value with { Amount = price.Value.Amount * times } };
}

using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>An offer is in one currency, and its groups of tax are there.</summary>
internal static class MoneyRules
{
    /// <summary>Checks the money of a job.</summary>
    public static void Check(Job job, Slips slips)
    {
        if (job.Money is not { } money)
            return;
        foreach (var line in money.Lines)
            Tax(line.Tax, $"the line '{line.What}'", line.At, (money, slips));
        Tax(money.Labour?.Tax, "the labour", money.At, (money, slips));
        var currency = job.Client?.Currency;
        foreach (var (what, amount) in Amounts(money))
        {
            currency ??= amount.Value.Currency;
            if (amount.Value.Currency != currency)
                slips.Add(RuleCodes.TwoCurrencies, amount.At, new($"{what} is '{amount.Written}'", $"everything of this offer is in {currency}", $"Write it in {currency}; the program changes no money."));
        }
    }

    private static void Tax(string? group, string who, Place at, (MoneyTerms Money, Slips Slips) to)
    {
        if (group is not null && to.Money.Taxes.All(tax => tax.Name != group))
            to.Slips.Unknown(RuleCodes.UnknownTax, at, new("group of tax", group, who, "of the offer"), [.. to.Money.Taxes.Select(tax => tax.Name)]);
    }

    private static IEnumerable<(string What, Given<Money> Amount)> Amounts(MoneyTerms money)
    {
        var told = new List<(string What, Given<Money>? Amount)> { ("the budget", money.Budget), ("the cost of an hour", money.Labour?.HourCost), ("the price of an hour", money.Labour?.HourPrice) };
        told.AddRange(money.Each.Select(each => ($"the price of each {each.Key}", (Given<Money>?)each.Value)));
        foreach (var line in money.Lines.Concat(money.Afterwards?.Variations ?? []))
            told.AddRange([($"the cost of '{line.What}'", line.Cost), ($"the price of '{line.What}'", line.Price)]);
        told.AddRange([("the price of energy", money.Owning?.Energy), ("the price of a battery visit", money.Owning?.BatteryVisit)]);
        told.AddRange([("the material in the end", money.Afterwards?.Material), ("the cost of a visit", money.Afterwards?.Visit)]);
        return told.Where(one => one.Amount is not null).Select(one => (one.What, one.Amount!));
    }
}

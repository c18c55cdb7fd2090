using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Money;

/// <summary>The goods of an offer that one supplier sends.</summary>
/// <param name="Supplier">Who; null for goods of which nobody wrote who sells them.</param>
/// <param name="Lines">The goods, options left out.</param>
public sealed record SupplierOrder(string? Supplier, IReadOnlyList<PricedLine> Lines)
{
    /// <summary>What they cost, as far as it is known.</summary>
    public decimal Cost => Lines.Sum(line => line.Cost ?? 0);

    /// <summary>Goods of which the cost is not known.</summary>
    public IReadOnlyList<PricedLine> NotKnown => [.. Lines.Where(line => line.Cost is null)];

    /// <summary>The goods of an offer by supplier, those without one behind.</summary>
    /// <param name="money">The offer.</param>
    /// <returns>The orders; empty when the offer has no goods.</returns>
    public static IReadOnlyList<SupplierOrder> Of(MoneyResult money) =>
        [.. money.Lines.Where(line => line is { IsLabour: false, Option: null }).GroupBy(line => SupplierOf(money.Bound.Job, line)).OrderBy(group => group.Key is null).ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new SupplierOrder(group.Key, [.. group]))];

    /// <summary>What several orders cost, as far as it is known.</summary>
    /// <param name="orders">The orders.</param>
    public static decimal Together(IEnumerable<SupplierOrder> orders) => orders.Sum(order => order.Cost);

    /// <summary>The name of the model a line is of: <c>wren-b</c> of <c>wren-b, supply small</c>, <c>cat6-23</c> of <c>cable cat6-23</c>, <c>panel-1</c> of <c>panel panel-1</c>.</summary>
    /// <param name="line">The line.</param>
    public static string ModelOf(PricedLine line)
    {
        var name = line.What.Split(',')[0];
        var words = name.Split(' ');
        if (words.Length > 1 && words[0] == "cable")
            return words[1];
        return words.Length == 2 && words[1].StartsWith(words[0], StringComparison.Ordinal) ? words[1] : name;
    }

    private static string? SupplierOf(Job job, PricedLine line) => job.Prices.LastOrDefault(price => price.Model == ModelOf(line))?.Supplier;
}

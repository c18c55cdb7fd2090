using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Money;

/// <summary>Pieces of workings about money.</summary>
internal static class MoneyWorking
{
    /// <summary>Each line with its price.</summary>
    public static IEnumerable<WorkingInput> Prices(MoneyResult result) => result.Lines.Where(line => line.Option is null)
        .Select(line => new WorkingInput(Told(line), (double?)line.Net, result.Currency, line.Net is null ? "not known" : "price of the line"));

    /// <summary>Each line with its cost, and what is put aside.</summary>
    public static IEnumerable<WorkingInput> Costs(MoneyResult result)
    {
        foreach (var line in result.Lines.Where(line => line.Option is null))
            yield return new WorkingInput(Told(line), (double?)line.Cost, result.Currency, line.Origin);
        if (result.CallBacks > 0)
            yield return new WorkingInput("put aside for coming back", (double)result.CallBacks, result.Currency, $"{Words.Of(100 * result.Terms.Labour!.CallBacks!.Value.Value)} % of the labour");
    }

    /// <summary>From lines to what is paid.</summary>
    public static List<WorkingStep> Totals(MoneyResult result)
    {
        var offer = result.Offer;
        var steps = new List<WorkingStep> { new("lines together", "the sum of rounded lines", (double)offer.Before, result.Currency) };
        if (offer.Discount > 0)
            steps.Add(new("discount", $"{Words.Of(100 * (double)offer.Terms.Discount)} % in each group of tax, rounded", -(double)offer.Discount, result.Currency));
        steps.Add(new("without tax", "", (double)offer.Net, result.Currency));
        foreach (var group in offer.Groups.Where(group => group.Name.Length > 0))
            steps.Add(new($"tax {group.Name}", $"{Words.Of(100 * (double)group.Rate)} % of {Words.Of((double)group.Base)}", (double)group.Tax, result.Currency));
        steps.Add(new("with tax", "the sum", (double)offer.Gross, result.Currency));
        return steps;
    }

    /// <summary>A line in words.</summary>
    public static string Told(PricedLine line) => line.Count == 1 && line.CountUnit.Length == 0 ? line.What
        : $"{line.Count.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)} {(line.CountUnit.Length > 0 ? $"{line.CountUnit} of" : "x")} {line.What}";
}

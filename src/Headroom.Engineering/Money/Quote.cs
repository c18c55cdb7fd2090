namespace Headroom.Engineering.Money;

/// <summary>An offer added up: lines to groups of tax, groups to totals. Nothing is rounded after the lines and the tax.</summary>
/// <param name="Lines">Its lines whose price is known.</param>
/// <param name="Groups">Its groups of tax, in the order of the terms.</param>
/// <param name="Terms">How it was added up.</param>
public sealed record Quote(IReadOnlyList<PricedLine> Lines, IReadOnlyList<TaxedGroup> Groups, QuoteTerms Terms)
{
    /// <summary>All lines, before anything is taken off.</summary>
    public decimal Before => Groups.Sum(group => group.Lines);

    /// <summary>What is taken off.</summary>
    public decimal Discount => Groups.Sum(group => group.Discount);

    /// <summary>The price without tax.</summary>
    public decimal Net => Groups.Sum(group => group.Base);

    /// <summary>The tax.</summary>
    public decimal Tax => Groups.Sum(group => group.Tax);

    /// <summary>What the client pays.</summary>
    public decimal Gross => Net + Tax;

    /// <summary>What all lines cost the firm, as far as it is known.</summary>
    public decimal Cost => Lines.Sum(line => line.Cost ?? 0);

    /// <summary>Adds up lines. Source: rounding of EN 16931 by default: lines first, totals exact, tax once for each group.</summary>
    /// <param name="lines">The lines; those without a price are left out.</param>
    /// <param name="terms">How they are added up.</param>
    /// <returns>The offer.</returns>
    public static Quote Of(IEnumerable<PricedLine> lines, QuoteTerms terms)
    {
        var known = lines.Where(line => line.Net is not null).ToList();
        var taxes = terms.Taxes.Count > 0 ? terms.Taxes : [("", 0m)];
        return new Quote(known, [.. taxes.Select(tax => Group(tax, known, taxes[0].Name, terms))], terms);
    }

    /// <summary>The offer with what was ordered on the way, from which nothing is taken off. Source: rounding of EN 16931 by default: tax once for each group.</summary>
    /// <param name="more">Lines behind those of the offer; those without a price are left out.</param>
    /// <returns>Both together.</returns>
    public Quote With(IEnumerable<PricedLine> more)
    {
        var known = more.Where(line => line.Net is not null).ToList();
        return new Quote([.. Lines, .. known], [.. Groups.Select(group => Grown(group, known))], Terms);
    }

    private TaxedGroup Grown(TaxedGroup group, List<PricedLine> more)
    {
        var mine = more.FindAll(line => (line.Tax ?? Groups[0].Name) == group.Name);
        var sum = mine.Sum(line => line.Net!.Value);
        var tax = Terms.TaxByLine ? group.Tax + mine.Sum(line => Round(line.Net!.Value * group.Rate, Terms)) : Round((group.Base + sum) * group.Rate, Terms);
        return group with { Lines = group.Lines + sum, Tax = tax };
    }

    private static TaxedGroup Group((string Name, decimal Rate) tax, List<PricedLine> lines, string usual, QuoteTerms terms)
    {
        var mine = lines.FindAll(line => (line.Tax ?? usual) == tax.Name);
        var sum = mine.Sum(line => line.Net!.Value);
        var off = Round(sum * terms.Discount, terms);
        var onLines = terms.TaxByLine ? mine.Sum(line => Round(line.Net!.Value * tax.Rate, terms)) - Round(off * tax.Rate, terms) : Round((sum - off) * tax.Rate, terms);
        return new TaxedGroup(tax.Name, tax.Rate, sum, off, onLines);
    }

    private static decimal Round(decimal amount, QuoteTerms terms) => Rounding.Of(amount, terms.Places, terms.Ties);
}

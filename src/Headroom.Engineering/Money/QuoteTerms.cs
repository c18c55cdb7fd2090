using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Money;

/// <summary>How lines are added to an offer.</summary>
/// <param name="Taxes">The groups of tax with their rates as shares; the first is the usual one; empty for none.</param>
/// <param name="Discount">What is taken off the whole, as a share.</param>
/// <param name="TaxByLine">True when tax is rounded line by line.</param>
/// <param name="Ties">Where half a smallest coin goes.</param>
/// <param name="Places">Places behind the point.</param>
public sealed record QuoteTerms(IReadOnlyList<(string Name, decimal Rate)> Taxes, decimal Discount, bool TaxByLine, TieRule Ties, int Places)
{
    /// <summary>The rounding in one sentence, the same on every paper.</summary>
    public string RoundingInWords => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"Every line is rounded to {Places} places, {Rounding.InWords(Ties)}; totals are sums of rounded lines; tax is rounded {(TaxByLine ? "line by line" : "once for each group")}.");
}

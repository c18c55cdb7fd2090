using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What the firm charges and wants to keep, and what belongs to an offer besides the goods.</summary>
/// <param name="Margin">What is to remain of each price, as a share of the price; null when not written.</param>
/// <param name="LeastMargin">The least that must remain of the whole; null when there is no floor.</param>
/// <param name="Discount">What is taken off the whole; null when nothing.</param>
/// <param name="Taxes">Tax by the name of its group, in the order written; the first is the usual one.</param>
/// <param name="TaxByLine">True when tax is rounded line by line, false when once for each group.</param>
/// <param name="Ties">Where half a smallest coin goes.</param>
/// <param name="Budget">The most the client will pay, tax included; null when not said.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record MoneyTerms(
    Given<Share>? Margin,
    Given<Share>? LeastMargin,
    Given<Share>? Discount,
    IReadOnlyList<TaxGroup> Taxes,
    bool TaxByLine,
    TieRule Ties,
    Given<Money>? Budget,
    Place At)
{
    /// <summary>The labour; null when none is offered.</summary>
    public LabourTerms? Labour { get; init; }

    /// <summary>What small things cost the firm each, by <c>cord</c>, <c>label</c> and <c>panel</c>.</summary>
    public IReadOnlyDictionary<string, Given<Money>> Each { get; init; } = new Dictionary<string, Given<Money>>();

    /// <summary>Models, or ids of units, that the client has already or buys elsewhere.</summary>
    public IReadOnlyList<string> LeaveOut { get; init; } = [];

    /// <summary>Lines of the offer besides what the design says.</summary>
    public IReadOnlyList<ExtraLine> Lines { get; init; } = [];

    /// <summary>What owning it costs; null when nobody asks.</summary>
    public OwningTerms? Owning { get; init; }

    /// <summary>What the job took in the end; null before it is done.</summary>
    public Afterwards? Afterwards { get; init; }
}

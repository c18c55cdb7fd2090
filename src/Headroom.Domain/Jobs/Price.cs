using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a model costs in a job, in place of what the catalogue says.</summary>
/// <param name="Model">The model, of whichever kind.</param>
/// <param name="Cost">What one costs.</param>
/// <param name="Supplier">Who sells it; null when not written.</param>
/// <param name="On">The day on which the price was right; null when not written.</param>
/// <param name="List">The list it stands in; null when not written.</param>
/// <param name="At">Where it is written.</param>
public sealed record Price(string Model, Given<Money> Cost, string? Supplier, DateOnly? On, string? List, Place At);

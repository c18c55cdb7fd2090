using Headroom.Domain.Findings;

namespace Headroom.Domain.Records;

/// <summary>Units that failed on one day.</summary>
/// <param name="Batch">The batch they belong to; null when there is no file of the fleet.</param>
/// <param name="Site">The site.</param>
/// <param name="Model">The model.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Failed">The day; null when not written.</param>
/// <param name="Replaced">The day from which others of the same model stood in their place; null when none did.</param>
/// <param name="CupboardCelsius">The air around them when they failed [°C]; null when not written.</param>
/// <param name="At">Where it stands.</param>
public sealed record FieldFailure(
    FleetBatch? Batch,
    string Site,
    string Model,
    int Count,
    DateOnly? Failed,
    DateOnly? Replaced,
    double? CupboardCelsius,
    Place At);

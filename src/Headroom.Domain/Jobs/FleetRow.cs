using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a firm has of one model in the field, at all of its sites, and what became of it.</summary>
/// <param name="Model">The model in the catalogue.</param>
/// <param name="Units">How many are in service; null when not known.</param>
/// <param name="Service">Time in service of all of them together, failed ones up to their failure [s]; null when not known.</param>
/// <param name="Failed">How many failed in that time; null when not known.</param>
/// <param name="HotService">The part of the time that was spent in hot places [s]; null when not known.</param>
/// <param name="HotFailed">How many of the failed stood in hot places; null when not known.</param>
/// <param name="Spares">How many lie on the shelf; null when not known.</param>
/// <param name="Supplier">How long until a new one comes [s]; null when not known.</param>
/// <param name="Certainty">The probability with which the shelf is to last until then; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record FleetRow(
    string Model,
    int? Units,
    Given<Seconds>? Service,
    int? Failed,
    Given<Seconds>? HotService,
    int? HotFailed,
    int? Spares,
    Given<Seconds>? Supplier,
    Given<Share>? Certainty,
    Place At);

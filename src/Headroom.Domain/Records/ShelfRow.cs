using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Records;

/// <summary>What lies on the shelf of one model.</summary>
/// <param name="Model">The model.</param>
/// <param name="Spares">How many; null when not written.</param>
/// <param name="Supplier">How long until a new one comes [s]; null when not written.</param>
/// <param name="Certainty">The probability with which the shelf is to last until then; null when not written.</param>
/// <param name="At">Where it stands.</param>
public sealed record ShelfRow(string Model, int? Spares, Given<Seconds>? Supplier, Given<Share>? Certainty, Place At);

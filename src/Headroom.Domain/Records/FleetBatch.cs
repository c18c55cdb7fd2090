using Headroom.Domain.Findings;

namespace Headroom.Domain.Records;

/// <summary>Units of one model that were put in together.</summary>
/// <param name="Site">The site.</param>
/// <param name="Place">Where they stand there; null when not written.</param>
/// <param name="Model">The model.</param>
/// <param name="Units">How many; 0 or more.</param>
/// <param name="Installed">The day they were put in; null when the hours in service are written instead.</param>
/// <param name="Removed">The day they were taken out whole; null while they are in service.</param>
/// <param name="ServiceHours">Hours in service of all of them together, failed ones up to their failure [h]; null when the days tell.</param>
/// <param name="PoweredShare">The share of the time for which they are powered [1], above 0 to 1; null when not written.</param>
/// <param name="CupboardCelsius">The air around them in an ordinary week [°C]; null when not written.</param>
/// <param name="At">Where it stands.</param>
public sealed record FleetBatch(
    string Site,
    string? Place,
    string Model,
    int Units,
    DateOnly? Installed,
    DateOnly? Removed,
    double? ServiceHours,
    double? PoweredShare,
    double? CupboardCelsius,
    Place At);

namespace Headroom.Domain.Records;

/// <summary>What a firm has written down over the years, a list for each of its files; null where there is no such file.</summary>
/// <param name="Fleet">What it has in the field.</param>
/// <param name="Failures">What failed of it; empty when nothing did.</param>
/// <param name="Shelf">What lies on the shelf, and how long suppliers take.</param>
/// <param name="Readings">What was measured, beside what was predicted.</param>
/// <param name="Jobs">What jobs took.</param>
public sealed record FirmBook(
    IReadOnlyList<FleetBatch>? Fleet,
    IReadOnlyList<FieldFailure>? Failures,
    IReadOnlyList<ShelfRow>? Shelf,
    IReadOnlyList<FirmMeasurement>? Readings,
    IReadOnlyList<JobHours>? Jobs);

using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What changes with the years, as far as somebody said it.</summary>
/// <param name="Devices">What is added in a year, in the order written; null when nobody said, empty when nothing is.</param>
/// <param name="Prices">By how much goods become dearer in a year; null when not written.</param>
/// <param name="Wages">By how much an hour becomes dearer in a year; null when not written.</param>
/// <param name="Energy">By how much a kilowatt-hour becomes dearer in a year; null when not written.</param>
/// <param name="AirLost">What dust takes of the air of every fan in a year; null when not written.</param>
/// <param name="CleanedEvery">How often dust is taken out [s]; null when not written: then nobody does.</param>
/// <param name="Installed">The day it was handed over; null when not written.</param>
/// <param name="Warranty">The warranty of units whose model says none [s]; null when not written.</param>
/// <param name="Tests">What is to be tested again and again, in the order written.</param>
public sealed record YearsPolicy(
    IReadOnlyList<DeviceGrowth>? Devices,
    Given<Share>? Prices,
    Given<Share>? Wages,
    Given<Share>? Energy,
    Given<Share>? AirLost,
    Given<Seconds>? CleanedEvery,
    DateOnly? Installed,
    Given<Seconds>? Warranty,
    IReadOnlyList<RepeatedTest> Tests)
{
    /// <summary>Where it stands in the file.</summary>
    public Place At { get; init; } = Place.None;

    /// <summary>Nobody has written anything.</summary>
    public static YearsPolicy None { get; } = new(null, null, null, null, null, null, null, null, []);
}

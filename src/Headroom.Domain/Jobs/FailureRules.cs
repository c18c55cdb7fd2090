using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a house bears of failures.</summary>
/// <param name="MostDark">How many endpoints may go dark or be cut off by one failure; null when nobody set it.</param>
/// <param name="MostLost">How long in a year an endpoint may be without power or line [s]; null when nobody set it.</param>
/// <param name="Repair">How long until somebody is on site with the part [s]; null when not written.</param>
/// <param name="Common">Share of failures that strike both of two alike at once; null when not written.</param>
public sealed record FailureRules(int? MostDark, Given<Seconds>? MostLost, Given<Seconds>? Repair, Given<Share>? Common)
{
    /// <summary>True when every switch and midspan must go on feeding all its ports when one of its supplies fails.</summary>
    public bool SupplyMayFail { get; init; }
}

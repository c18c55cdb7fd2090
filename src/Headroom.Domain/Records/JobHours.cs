using Headroom.Domain.Findings;

namespace Headroom.Domain.Records;

/// <summary>What one job took and brought. Amounts are in one currency; null is what nobody wrote.</summary>
/// <param name="Job">The job.</param>
/// <param name="Currency">The currency of its amounts; null when it has none.</param>
/// <param name="At">Where it stands.</param>
public sealed record JobHours(string Job, string? Currency, Place At)
{
    /// <summary>The day it was finished.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Hours that were estimated.</summary>
    public decimal? Estimated { get; init; }

    /// <summary>Hours that were worked, without those of coming back.</summary>
    public decimal? Worked { get; init; }

    /// <summary>What an hour costs the firm.</summary>
    public decimal? HourCost { get; init; }

    /// <summary>The price as offered, without tax.</summary>
    public decimal? Price { get; init; }

    /// <summary>What the goods cost in the end.</summary>
    public decimal? Material { get; init; }

    /// <summary>What was charged for what was ordered on the way.</summary>
    public decimal? VariationPrice { get; init; }

    /// <summary>What that cost besides hours.</summary>
    public decimal? VariationCost { get; init; }

    /// <summary>Times somebody went there, without those of coming back.</summary>
    public int? Visits { get; init; }

    /// <summary>Times somebody had to come back.</summary>
    public int? CallBacks { get; init; }

    /// <summary>Hours of coming back.</summary>
    public decimal? CallBackHours { get; init; }

    /// <summary>What one way there and back costs besides its hours.</summary>
    public decimal? Visit { get; init; }
}

using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Record;

/// <summary>The ranges in which quantities of a firm's record make sense.</summary>
internal static class RecordBounds
{
    private const double Hour = 3600;

    /// <summary>Hours in service of many units together.</summary>
    public static (UnitTable, Bounds, string) Service => (Seconds.Units, new(0.1 * Hour, 1e10 * Hour), "h");

    /// <summary>A share of the time.</summary>
    public static (UnitTable, Bounds, string) Powered => (Share.Units, new(1e-4, 1), "%");

    /// <summary>Air around devices.</summary>
    public static (UnitTable, Bounds, string) Air => (Celsius.Units, new(-50, 90), "°C");

    /// <summary>How long a supplier takes.</summary>
    public static (UnitTable, Bounds, string) Lead => (Seconds.Units, new(Hour, 3 * 365.25 * 24 * Hour), "h");

    /// <summary>The probability with which a shelf is to last.</summary>
    public static (UnitTable, Bounds, string) Certainty => (Share.Units, new(0.5, 0.9999), "%");

    /// <summary>Hours of people on one job.</summary>
    public static (UnitTable, Bounds, string) Work => (Seconds.Units, new(0, 100_000 * Hour), "h");
}

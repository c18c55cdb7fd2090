using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Jobs;

/// <summary>What can be measured, and in which unit a reading keeps it.</summary>
internal static class ReadingKinds
{
    /// <summary>The units and the one that is kept, by the word people write.</summary>
    public static IReadOnlyDictionary<string, (UnitTable Units, string Kept)> All { get; } = new Dictionary<string, (UnitTable, string)>
    {
        ["watts"] = (Watts.Units, "W"),
        ["volts"] = (Volts.Units, "V"),
        ["amperes"] = (Amperes.Units, "A"),
        ["ohms"] = (Ohms.Units, "Ω"),
        ["unbalance"] = (Ohms.Units, "Ω"),
        ["sound"] = (SoundPressure.Units, "dB(A)"),
        ["temperature"] = (Celsius.Units, "°C"),
        ["minutes"] = (Seconds.Units, "min"),
        ["loss"] = (Decibels.Units, "dB"),
        ["length"] = (Metres.Units, "m"),
        ["speed"] = (BitsPerSecond.Units, "Mb/s"),
    };

    /// <summary>Every unit in which something can be measured, where the quantity is still to be told.</summary>
    public static UnitTable Any => new("a measured value", [.. All.Values.SelectMany(kind => kind.Units.Units).DistinctBy(unit => unit.Symbol)]);

    /// <summary>What is measured in a unit; null when it may be several things, or none.</summary>
    public static string? By(string symbol)
    {
        var kinds = All.Where(kind => kind.Value.Units.Find(symbol) is not null).Select(kind => kind.Key).ToList();
        return kinds is [var only] ? only : null;
    }
}

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
}

using Headroom.Domain.Ledgers;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Heat;
using Headroom.Engineering.Power;
using Headroom.Engineering.Racking;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>What an entry is about, and how long things take; the minutes are common practice, no source.</summary>
internal static class Entries
{
    /// <summary>Minutes to change a setting.</summary>
    public static (int Low, int High) Setting => (3, 10);

    /// <summary>Minutes to move a cord.</summary>
    public static (int Low, int High) Patching => (5, 15);

    /// <summary>Minutes to exchange or move a unit.</summary>
    public static (int Low, int High) Moving => (30, 90);

    /// <summary>Minutes of small work with tools.</summary>
    public static (int Low, int High) Tools => (45, 150);

    /// <summary>Minutes of half a day's work.</summary>
    public static (int Low, int High) HalfDay => (120, 300);

    /// <summary>True when it is about watts or volts, or about coming back after an outage.</summary>
    public static bool IsOfPower(LedgerEntry entry) => entry.Discipline == PowerLedger.Discipline || entry.Discipline == StandbyLedger.Discipline;

    /// <summary>True when it is about a standby supply.</summary>
    public static bool IsOfStandby(LedgerEntry entry) => entry.Discipline == StandbyLedger.Discipline;

    /// <summary>True when it is about sound.</summary>
    public static bool IsOfSound(LedgerEntry entry) => entry.Discipline == AcousticLedger.Discipline;

    /// <summary>True when it is about heat.</summary>
    public static bool IsOfHeat(LedgerEntry entry) => entry.Discipline == HeatLedger.Discipline;

    /// <summary>True when it is about a cable or a pathway.</summary>
    public static bool IsOfCable(LedgerEntry entry) => entry.Discipline == CablingLedger.Discipline;

    /// <summary>True when it is about traffic.</summary>
    public static bool IsOfTraffic(LedgerEntry entry) => entry.Discipline == TrafficLedger.Discipline;

    /// <summary>True when it is about a rack.</summary>
    public static bool IsOfRack(LedgerEntry entry) => entry.Discipline == RackingLedger.Discipline;

    /// <summary>True when the volts at a device, or the ohms on the way to it, are too few or too many.</summary>
    public static bool IsOfVolts(LedgerEntry entry) => entry.Quantity is "volts" or "loop" or "channel-loop";
}

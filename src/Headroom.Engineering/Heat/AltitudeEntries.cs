using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>Entries for the height above the sea against what a unit is rated for.</summary>
internal static class AltitudeEntries
{
    /// <summary>The entry; null where height or rating is not written.</summary>
    public static LedgerEntry? Of(UnitHeat unit, HeatResult result)
    {
        if (result.Bound.Job.Survey.Altitude is not { } altitude || unit.Unit.Body.MostAltitude is not { } rated || altitude.Value.Value <= 0)
            return null;
        var verdict = Judge.Known(altitude.Value.Value, rated.Value.Value, 0);
        return new LedgerEntry
        {
            Discipline = HeatLedger.Discipline,
            Subject = unit.Unit.Id,
            Quantity = "altitude",
            What = "height above the sea",
            Unit = "m",
            Kind = "length",
            Demand = altitude.Value.Value,
            Limit = rated.Value.Value,
            Reserve = 0,
            Studied = verdict,
            Advice = verdict == Verdict.Short ? ["a model that is rated for the height: fans cool less in thin air, and insulation holds less"] : [],
            Story = new AltitudeStory(altitude, rated),
        };
    }
}

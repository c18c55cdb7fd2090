using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Heat;

/// <summary>Entries for a fan that is put in place of the maker's: the air it leaves of what the maker's moves.</summary>
internal static class FanEntries
{
    private const double SecondsPerHour = 3600;

    /// <summary>The entry of a changed fan.</summary>
    public static LedgerEntry Of(UnitHeat unit, FanChange change, Reserve reserve)
    {
        var (own, put) = (SecondsPerHour * change.Flows?.Own, SecondsPerHour * change.Flows?.Put);
        if (change.Fit == FanFit.MayNotStart)
            put = 0;
        // What is needed is what the maker's fan moves; a fan that may not start is short whatever it would move.
        var verdict = own is { } needed && put is { } there ? Judge.Known(needed, there, reserve.Of(there)) : Verdict.Unknown;
        if (verdict == Verdict.Clear && change.Misfits.Count > 0)
            verdict = Verdict.Tight;
        return new LedgerEntry
        {
            Discipline = HeatLedger.Discipline,
            Subject = unit.Unit.Id,
            Quantity = "fan",
            What = change.Airway is null ? "air of a changed fan" : "air of a changed way",
            Unit = "m³/h",
            Kind = "air",
            Sense = Sense.AtLeast,
            Demand = own,
            Limit = put,
            Reserve = put is { } limit ? reserve.Of(limit) : null,
            Studied = verdict,
            Question = verdict == Verdict.Unknown ? change.Question : null,
            Assumed = ["air of one fan at full speed; the path behind it taken from what the maker's fan moves"],
            Cautions = [CautionTable.OpenCase],
            Advice = verdict is Verdict.Short or Verdict.Tight ? [change.Airway is not null && change.Put == change.Own ? "leave the way of the air as it was made" : "leave the maker's fan in: move the switch, or take a quieter model"] : [],
            Story = new FanStory(unit, change),
        };
    }
}

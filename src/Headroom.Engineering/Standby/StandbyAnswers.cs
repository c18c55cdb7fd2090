using Headroom.Domain.Ledgers;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>Answers the questions people ask about outages.</summary>
internal static class StandbyAnswers
{
    /// <summary>The answers of a result.</summary>
    public static IEnumerable<Answer> Of(StandbyResult result)
    {
        foreach (var supply in result.Supplies)
        {
            if (supply.Governing is { Seconds: { } worst } && supply.Cases[0].Seconds is { } best)
                yield return new(supply.Placed.Id, "How long does it hold?", Holds(supply, best / 60, worst / 60));
        }

        foreach (var unit in result.Restart.Units)
        {
            if (unit.Switch is not null && unit.Ports.Count > 0 && (unit.Waves > 1 || unit.Dark.Count > 0))
                yield return new(unit.Id, "What happens when the power comes back?", Restart(unit));
        }
    }

    private static string Holds(StandbySupply supply, double best, double worst)
    {
        var load = $"{Words.Of(supply.Stages[0].Watts)} W {PowerWords.Of(supply.State)}{(supply.Stages.Count > 1 ? ", then less" : "")}";
        return $"Between {Words.Of(Math.Floor(worst))} min, at the end of the battery's life in the cold, and {Words.Of(Math.Floor(best))} min, new at 25 °C, with {load}; tables of two makers differ by a tenth.";
    }

    private static string Restart(UnitRestart unit)
    {
        var up = unit.Ports.Count - unit.Dark.Count;
        var waves = unit.Waves > 1 ? $" in {unit.Waves} waves" : "";
        var dark = unit.Dark.Count == 0 ? "" : $"; {Words.List([.. unit.Dark.Select(port => port.Port.Id)])} {(unit.Dark.Count == 1 ? "stays" : "stay")} dark";
        return $"{up} of {unit.Ports.Count} devices come up{waves}{dark}.";
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Standby;

/// <summary>What gives more minutes, costless first.</summary>
internal static class RuntimeAdvice
{
    private const int Halvings = 50;
    private const int MostBlocks = 12;

    /// <summary>The advice for a supply that is short or tight.</summary>
    public static List<string> Of(StandbySupply supply, Reserve reserve)
    {
        var advice = new List<string>();
        if (LatestShed(supply) is { } latest && latest.Watts < supply.Stages[0].Watts)
            advice.Add($"switch off the ports of low priority {(latest.Seconds < 30 ? "at once" : $"after {Words.Of(Math.Floor(latest.Seconds / 60))} min at the latest")}: then {Words.Of(latest.Watts)} W are left to feed and the minutes are there");
        if (supply.PastLife)
            advice.Add($"put new batteries into {supply.Placed.Id}");
        if (Blocks(supply, reserve) is { } blocks)
            advice.Add($"{blocks} blocks in the place of {supply.Model.Blocks}, in a supply or battery box made for them, would do");
        if (MostWatts(supply, supply.Wanted!.Value.Value) is { } watts && watts < supply.Stages[0].Watts)
            advice.Add($"feed no more than {Words.Of(watts)} W from it");
        return advice;
    }

    /// <summary>The latest moment at which switching off the ports of low priority still gives the minutes wanted, and what is fed from then on; null when it is not needed, or of no use.</summary>
    public static (double Seconds, double Watts)? LatestShed(StandbySupply supply)
    {
        if (supply.KeepsLow || supply.Wanted is not { } wanted || supply.Governing is not { Derating: { } derating } || !supply.Units.HasPorts(Priority.Low)
            || supply.Units.WattsIn(supply.State, priority => priority != Priority.Low) is not { } rest)
            return null;
        bool Holds(double moment) => StagedRuntime.Smaller(supply.Table!.Table, [
            new(0, supply.TableWatts(supply.Stages[0].Watts, derating)), new(moment, supply.TableWatts(rest, derating))]) >= wanted.Value.Value;
        var (early, late) = (0.0, wanted.Value.Value);
        if (!Holds(early) || Holds(late))
            return null;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (early + late) / 2;
            (early, late) = Holds(middle) ? (middle, late) : (early, middle);
        }

        return (early, rest);
    }

    /// <summary>The most that may be fed from the beginning so that a time is kept, stages in proportion [W]; null when none does.</summary>
    public static double? MostWatts(StandbySupply supply, double seconds)
    {
        if (supply.Governing is not { Derating: { } derating } || seconds > supply.Table!.Table.LongestSeconds)
            return null;
        var (low, high) = (0.0, 1.0);
        while (Held(high) >= seconds && high < 1024)
            high *= 2;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Held(middle) >= seconds ? (middle, high) : (low, middle);
        }

        return low * supply.Stages[0].Watts;
        double? Held(double times) => StagedRuntime.Smaller(supply.Table.Table, supply.OnTable(derating, times));
    }

    private static int? Blocks(StandbySupply supply, Reserve reserve)
    {
        if (supply.Table is not { AtOutput: false } table || supply.Model.Blocks is not { } now || supply.Governing is not { Derating: { } derating })
            return null;
        for (var blocks = now + 1; blocks <= now + MostBlocks; blocks++)
        {
            var held = StagedRuntime.Smaller(table.Table.Times((double)blocks / now), supply.OnTable(derating)) / 60;
            if (held is { } minutes && minutes - reserve.Of(minutes) >= supply.Wanted!.Value.Value / 60)
                return blocks;
        }

        return null;
    }
}

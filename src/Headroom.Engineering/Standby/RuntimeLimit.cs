using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>The minutes that count against those wanted, and what is said beside them.</summary>
internal static class RuntimeLimit
{
    /// <summary>The minutes of the case that carries the verdict [s]; where the load is too heavy for the table, its shortest time if more than that is wanted; else null.</summary>
    public static double? Seconds(StandbySupply supply) => supply.Governing is not { } governing ? null
        : governing.Seconds ?? (TooHeavy(supply) && supply.Wanted?.Value.Value > supply.Table!.Table.ShortestSeconds ? supply.Table.Table.ShortestSeconds : null);

    /// <summary>True when the load, aged and cold, is more than the table goes up to.</summary>
    public static bool TooHeavy(StandbySupply supply) => supply.Governing is { Derating: { } derating } && supply.Table is { } table
        && supply.OnTable(derating)[0].Watts > table.Table.MostWatts;

    /// <summary>True when all of the load lies below the table: it holds longer than is told.</summary>
    public static bool TooLight(StandbySupply supply) => supply.Governing is { Derating: { } derating } && supply.Table is { } table
        && supply.OnTable(derating)[0].Watts < table.Table.LeastWatts;

    /// <summary>Half the interval of the minutes [s]: what a table off by its spread comes to; null when not known.</summary>
    public static double? Spread(StandbySupply supply)
    {
        if (supply.Governing is not { Derating: { } derating, Seconds: { } seconds })
            return null;
        var less = StagedRuntime.Smaller(supply.Table!.Table, supply.OnTable(derating, 1 + supply.Table.Spread));
        return less is { } lower ? seconds - lower : supply.Table.Spread * seconds;
    }

    /// <summary>What is to be found out; null when nothing.</summary>
    public static string? Question(StandbySupply supply) => supply.Question
        ?? (supply.Governing is { Derating: null } ? $"how cold does it get where {supply.Placed.Id} stands? {Words.Of(supply.Place.Coldest)} °C is outside what its battery is told for"
            : $"how long does {supply.Placed.Id} hold {Words.Of(supply.Stages[0].Watts)} W? aged and cold that is more than its table goes up to; run it down once, watched");

    /// <summary>What was assumed.</summary>
    public static List<string> Assumed(StandbySupply supply)
    {
        var assumed = new List<string>();
        if (supply.Cases.Count == 0)
            return assumed;
        if (supply.Table!.Rough)
            assumed.Add($"no discharge table for {supply.Placed.Id}: a law taken, rough, ± 30 %");
        if (supply.Place.Assumed)
            assumed.Add($"air at {supply.Placed.Id} not written: {Words.Of(supply.Place.Coldest)} °C taken");
        if (supply.Placed.BatteryAge is null)
            assumed.Add($"age of the battery of {supply.Placed.Id} not written: judged at the end of its life, as all are");
        if (supply.PastLife)
            assumed.Add($"battery of {supply.Placed.Id} past its life: half its capacity taken");
        if (supply.Model.NoLoad is null && !supply.Table.AtOutput)
            assumed.Add($"draw of {supply.Model.Id} with nothing connected not written: held in its efficiency");
        if (TooLight(supply))
            assumed.Add($"load of {supply.Placed.Id} below its table: the last row taken, it holds longer");
        return assumed;
    }

    /// <summary>The cases beside one another: a range, never one number.</summary>
    public static List<BesideRow> Beside(StandbySupply supply)
    {
        var rows = new List<BesideRow>(supply.Cases.Count);
        foreach (var one in supply.Cases)
            rows.Add(new("state", one.Name, supply.Wanted?.Value.Value / 60, one.Seconds / 60, one.Seconds is null ? "outside the table" : ""));
        return rows;
    }
}

namespace Headroom.Engineering.Heat;

/// <summary>What was assumed on the way to the air at an inlet.</summary>
internal static class HeatAssumed
{
    /// <summary>The assumptions, each in words.</summary>
    public static List<string> Of(UnitHeat unit, HeatResult result)
    {
        var assumed = new List<string>();
        if (unit.Place is { Box: { } box } place && place.Cases.Any(one => one.Worked is not null))
            assumed.AddRange(box.Assumed);
        if (unit.Place is { Box.Question: not null, Cases.Count: > 0 } written)
            assumed.Add($"what its walls and vents let through is not known: the air of {written.Space.Id} taken as written, the equipment running");
        if (unit.Cabinet is { } cabinet)
            assumed.AddRange(cabinet.Assumed);
        if (unit.Worst is { Fan: { Rise: null } } && unit.Unit is { IsFanless: false, Sound: not null })
            assumed.Add($"how much air {unit.Unit.Body.Id} moves is not in the catalogue: what comes back of its own warm air was not counted");
        else if (unit.Worst is { Fan.Returned: > 0 })
            assumed.Add($"{Words.Of(100 * unit.Share)} % of its own air comes back to {unit.Unit.Id}: {(unit.Share > 0.1 ? "a rack without panels in its empty units" : "nothing blocks its outlet")}, common practice, no source");
        if (unit.Worst is { Fan.Settles: false } unsettled)
            assumed.Add($"the fans of {unit.Unit.Id} go up and down between two levels: the hotter inlet and level {unsettled.Fan.Level} taken");
        if (unit.Stacked is { } other)
            assumed.Add($"{unit.Unit.Id} and {other} lie on each other without fans: neither is rated for that, and how warm they grow was not worked out from the air alone");
        if (result.Altitude > ThermalClass.From)
            assumed.Add("thin air takes 1 K off a rating for each 300 m above 900 m, from memory; where the maker says more, that holds");
        return assumed;
    }
}

namespace Headroom.Domain.Rules;

/// <summary>What is stacked stands on something that is there.</summary>
internal static class StackRules
{
    /// <summary>Checks the stacks of a whole design.</summary>
    public static void Check(DesignView view, Slips slips)
    {
        var units = JobNames.By([.. view.Units], unit => unit.Id);
        foreach (var unit in units.Values)
        {
            if (unit.Standing.On is not { } on)
                continue;
            if (!units.ContainsKey(on))
                slips.Unknown(RuleCodes.StackedOn, unit.At, new("unit", on, unit.Id, "of the design"), units.Keys);
            else if (InRing(unit, units))
                slips.Add(RuleCodes.StackedOn, unit.At, new($"{unit.Id} is stacked on {on}, and in the end on itself", "the lowest of a stack stands by itself", "Take 'on' out of the lowest."));
        }
    }

    private static bool InRing(StandingUnit unit, Dictionary<string, StandingUnit> units)
    {
        var below = unit;
        for (var steps = 0; steps <= units.Count; steps++)
        {
            if (below.Standing.On is not { } on || !units.TryGetValue(on, out below))
                return false;
        }

        return true;
    }
}

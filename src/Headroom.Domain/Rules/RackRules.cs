using System.Globalization;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Units fit their racks, and no two fill the same place.</summary>
internal static class RackRules
{
    /// <summary>Checks the rack places of a whole design.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        var filled = new Dictionary<string, string>();
        foreach (var unit in view.Units)
        {
            if (unit.Standing is not { In: { } id, Unit: { } lowest } || !names.Racks.TryGetValue(id, out var rack))
                continue;
            if (Fits(unit, rack, lowest, slips))
                Fill(unit, (id, lowest), filled, slips);
        }
    }

    // A unit of unknown height fills at least the one it is written at.
    private static int Height(StandingUnit unit) => Math.Max(1, (int)Math.Ceiling(unit.Height ?? 1));

    private static bool Fits(StandingUnit unit, Rack rack, int lowest, Slips slips)
    {
        var highest = lowest + Height(unit) - 1;
        if (lowest >= 1 && (rack.Height is null || highest <= rack.Height.Value.Value))
            return true;
        var fills = highest > lowest ? $"the units {lowest} to {highest}" : $"unit {lowest}";
        var said = new Said(
            $"{unit.Id} fills {fills} of rack {rack.Id}",
            rack.Height is null ? "units count from 1 at the bottom" : $"rack {rack.Id} is {rack.Height.Written} high; units count from 1 at the bottom",
            "Put it lower, or correct the height of the rack.");
        slips.Add(RuleCodes.OutsideRack, unit.At, said);
        return false;
    }

    // Things without rack height stand on shelves, where two may share a unit: they are not compared.
    private static void Fill(StandingUnit unit, (string Rack, int Lowest) at, Dictionary<string, string> filled, Slips slips)
    {
        if (unit.Height is null)
            return;
        for (var u = at.Lowest; u < at.Lowest + Height(unit); u++)
        {
            if (filled.TryAdd(Place(at.Rack, u), unit.Id))
                continue;
            var said = new Said(
                $"{unit.Id} fills unit {u} of rack {at.Rack}, where {filled[Place(at.Rack, u)]} is already",
                "a rack unit holds one thing",
                "Put one of them elsewhere.");
            slips.Add(RuleCodes.UnitsOverlap, unit.At, said, unit.Id);
        }
    }

    private static string Place(string rack, int unit) => string.Create(CultureInfo.InvariantCulture, $"{unit} {rack}");
}

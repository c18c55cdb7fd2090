using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Gathers the units of a design that stand somewhere and leave heat there.</summary>
internal static class HeatUnits
{
    // A unit that fills no rack unit of its own and is fanless lies on another when their spots are closer than this [m].
    private const double OnTop = 0.05;

    /// <summary>All switches, injectors and standby supplies.</summary>
    public static List<HeatUnit> Of(BoundDesign bound, Func<string, HeatLoad> loadOf)
    {
        var racks = new Dictionary<string, Rack>(bound.Job.Survey.Racks.Count);
        foreach (var rack in bound.Job.Survey.Racks)
            racks[rack.Id] = rack;
        var units = new List<HeatUnit>(bound.Switches.Count + bound.Injectors.Count);
        foreach (var s in bound.Switches)
        {
            units.Add(In(new HeatUnit(s.Id, s.Model.Body, s.Placed.Standing, loadOf(s.Id), s.Placed.At)
            {
                Sound = s.Model.Sound, Level = s.Placed.Level, Change = FanChanges.Of(s, bound.Catalogue),
            }, racks));
        }

        foreach (var injector in bound.Injectors)
            units.Add(In(new HeatUnit(injector.Id, injector.Model.Body, injector.Placed.Standing, loadOf(injector.Id), injector.Placed.At), racks));
        foreach (var unit in bound.Design.Standby)
        {
            if (unit.Model is { } id && bound.Catalogue.Standby.TryGetValue(id, out var model))
                units.Add(In(Standby(unit, model, bound.Catalogue, loadOf), racks));
        }

        return units;
    }

    /// <summary>The fanless unit on which a fanless unit lies, or which lies on it; null for none.</summary>
    public static string? StackedOn(HeatUnit unit, List<HeatUnit> units)
    {
        if (!unit.IsFanless)
            return null;
        foreach (var other in units)
        {
            if (!ReferenceEquals(other, unit) && other.IsFanless && other.Standing.In is { } place && place == unit.Standing.In && Touch(unit, other))
                return other.Id;
        }

        return null;
    }

    private static HeatUnit Standby(PlacedStandby unit, StandbyModel model, Catalogue catalogue, Func<string, HeatLoad> loadOf) =>
        new(unit.Id, model.Body, unit.Standing, loadOf(unit.Id), unit.At)
        {
            Sound = model.Sound,
            Battery = model.Battery is { } battery ? catalogue.Batteries.GetValueOrDefault(battery) : null,
        };

    private static HeatUnit In(HeatUnit unit, Dictionary<string, Rack> racks) =>
        unit.Standing.In is { } place && racks.TryGetValue(place, out var rack) ? unit with { Rack = rack, Space = rack.In } : unit with { Space = unit.Standing.In };

    private static bool Touch(HeatUnit one, HeatUnit other)
    {
        if (one.Standing.Unit is { } unit && other.Standing.Unit is { } there)
            return unit + Math.Ceiling(one.Body.Units?.Value.Value ?? 1) == there || there + Math.Ceiling(other.Body.Units?.Value.Value ?? 1) == unit;
        return one.Standing.Spot is { Value: var spot } && other.Standing.Spot is { Value: var its }
            && Math.Abs(spot.X - its.X) < OnTop && Math.Abs(spot.Y - its.Y) < OnTop && Math.Abs(spot.Z - its.Z) < 2 * OnTop;
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Puts what a design has into the racks of the survey.</summary>
public static class RackingStudy
{
    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="mainsWatts">What a unit takes from the mains at its most [W], as the study of power found it; null when not known. Source: none, it is handed on.</param>
    /// <returns>The result; entries are made from it by <see cref="RackingLedger"/>.</returns>
    public static RackingResult Of(BoundDesign bound, Func<string, double?> mainsWatts)
    {
        var things = Things(bound);
        var racks = new List<RackUse>();
        foreach (var rack in bound.Job.Survey.Racks)
        {
            var inside = things.FindAll(thing => thing.Standing.In == rack.Id);
            if (inside.Count > 0)
                racks.Add(Use(rack, inside, bound.Catalogue));
        }

        var stacks = new List<Stacked>();
        foreach (var thing in things)
        {
            if (thing.Standing.On is { } on && things.Find(other => other.Id == on) is { } below)
                stacks.Add(new Stacked(thing, below));
        }

        return new RackingResult(bound, racks, things, stacks, mainsWatts);
    }

    private static List<RackThing> Things(BoundDesign bound)
    {
        var things = new List<RackThing>();
        foreach (var unit in bound.Switches)
            things.Add(new RackThing(unit.Id, "switch", unit.Placed.Standing, unit.Model.Body, null) { FedBy = unit.Placed.FedBy, HasPlug = unit.Supply?.Input != "dc" });
        foreach (var unit in bound.Injectors)
            things.Add(new RackThing(unit.Id, "injector", unit.Placed.Standing, unit.Model.Body, null) { FedBy = unit.Placed.FedBy, HasPlug = unit.Model.Supply.Input != "dc" });
        foreach (var unit in bound.Design.Standby)
        {
            if (unit.Model is { } model && bound.Catalogue.Standby.TryGetValue(model, out var found))
                things.Add(new RackThing(unit.Id, "standby supply", unit.Standing, found.Body, null) { HasPlug = true });
        }

        foreach (var fitting in bound.Job.Survey.Fittings)
            things.Add(new RackThing(fitting.Id, fitting.Kind, fitting.Standing, null, fitting));
        foreach (var fitting in bound.Design.Fittings)
            things.Add(new RackThing(fitting.Id, fitting.Kind, fitting.Standing, null, fitting));
        return things;
    }

    private static RackUse Use(Rack rack, List<RackThing> inside, Catalogue catalogue)
    {
        var cabinet = rack.Cabinet is { } name ? catalogue.Cabinets.GetValueOrDefault(name) : null;
        var loose = inside.FindAll(thing => !thing.IsMounted && (thing.Fitting is null || thing.Fitting.Kind == "other"));
        var behind = inside.FindAll(thing => !thing.IsMounted && thing.Fitting is not null && thing.Fitting.Kind != "other");
        var mounted = inside.FindAll(thing => thing.IsMounted);
        var height = (int)Math.Floor((rack.Height ?? cabinet?.Inside)?.Value.Value ?? 0);
        return new RackUse(rack, cabinet, [.. Places(mounted, height), .. behind.Select(thing => new RackPlace(thing, null, false))], loose);
    }

    private static List<RackPlace> Places(List<RackThing> mounted, int height)
    {
        var filled = new HashSet<int>();
        var waiting = new List<RackThing>();
        var places = new List<RackPlace>();
        foreach (var thing in mounted)
        {
            if (thing.Standing.Unit is not { } lowest)
            {
                waiting.Add(thing);
                continue;
            }

            for (var unit = lowest; unit < lowest + thing.Fills; unit++)
                filled.Add(unit);
            places.Add(new RackPlace(thing, lowest, false));
        }

        Propose(waiting, (height, filled), places);
        places.Sort((left, right) => (left.Lowest ?? int.MaxValue).CompareTo(right.Lowest ?? int.MaxValue));
        return places;
    }

    // What is heavy goes low, and what is plugged by hand goes high.
    private static void Propose(List<RackThing> waiting, (int Height, HashSet<int> Filled) rack, List<RackPlace> places)
    {
        if (waiting.Count == 0)
            return;
        var found = rack.Height < 1 ? new int[waiting.Count]
            : RackFit.Place(rack.Height, rack.Filled, [.. waiting.Select(thing => (thing.Fills, thing.Kind is "standby supply" or "shelf"))]);
        for (var i = 0; i < waiting.Count; i++)
            places.Add(new RackPlace(waiting[i], found[i] > 0 ? found[i] : null, true));
    }
}

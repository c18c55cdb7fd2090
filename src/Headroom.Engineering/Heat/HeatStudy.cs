using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Applies the physics of heat and air to a bound design: how warm it is where each unit stands, and at its inlet.</summary>
public static class HeatStudy
{
    // Share of its own air that comes back: middle of 0.1 to 0.3 in a rack without panels, of 0 to 0.1 elsewhere (common practice, no source).
    private const double InOpenRack = 0.2;
    private const double Elsewhere = 0.05;

    // Above this height thin air takes a kelvin off a rating for every so many metres: what most classes of equipment lose.
    private const double MetresPerKelvin = 300;

    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="inputs">What units and devices leave, as the study of power found it.</param>
    /// <returns>The result; entries are made from it by <see cref="HeatLedger"/>.</returns>
    public static HeatResult Of(BoundDesign bound, HeatInputs inputs)
    {
        var altitude = bound.Job.Survey.Altitude?.Value.Value ?? 0;
        var spaces = new Dictionary<string, Space>(bound.Job.Survey.Spaces.Count);
        foreach (var space in bound.Job.Survey.Spaces)
            spaces[space.Id] = space;
        var units = HeatUnits.Of(bound, inputs.LoadOf);
        var places = new Dictionary<string, HeatPlace>();
        foreach (var unit in units)
        {
            if (unit.Space is { } id && !places.ContainsKey(id) && spaces.TryGetValue(id, out var space))
                places[id] = PlaceOf(space, units, (spaces, inputs, altitude));
        }

        var racks = new Dictionary<string, HeatLoad>();
        foreach (var unit in units)
        {
            if (unit.Rack is { } rack)
                racks[rack.Id] = (racks.GetValueOrDefault(rack.Id) ?? HeatLoad.Nothing).And(unit.Load);
        }

        return new HeatResult(bound, [.. places.Values], units.ConvertAll(unit => UnitOf(unit, units, (bound, places, racks, altitude))), altitude);
    }

    private static HeatPlace PlaceOf(Space space, List<HeatUnit> units, (Dictionary<string, Space> Spaces, HeatInputs Inputs, double Altitude) with)
    {
        var load = HeatLoad.Nothing;
        foreach (var unit in units)
        {
            if (unit.Space == space.Id)
                load = load.And(unit.Load);
        }

        if (!WarmBoxes.Encloses(space))
            return new(space, load, null, Cases(space, null, (null, load, with.Altitude)));
        load = load.And(with.Inputs.DevicesIn(space.Id));
        var box = WarmBoxes.Of(space);
        var around = space.Enclosure?.Beside is { } beside ? with.Spaces.GetValueOrDefault(beside) : null;
        return new(space, load, box, Cases(space, around, (box, load, with.Altitude)));
    }

    private static List<AirCase> Cases(Space space, Space? around, (WarmBox? Box, HeatLoad Load, double Altitude) with)
    {
        var cases = new List<AirCase>();
        foreach (var (name, written) in space.Temperatures)
            cases.Add(new(name, written, null, null, null));
        if (around is null || with.Box is not { } box)
            return cases;
        foreach (var (name, given) in around.Temperatures)
        {
            var outside = given.Value.Value + (given.PlusMinus ?? 0);
            var worked = new AirCase(
                name, space.Temperatures.GetValueOrDefault(name), outside,
                box.Rise(with.Load.OrdinaryWatts, outside, with.Altitude), box.Rise(with.Load.MostWatts, outside, with.Altitude));
            var at = cases.FindIndex(one => one.Name == name);
            if (at >= 0)
                cases[at] = worked;
            else
                cases.Add(worked);
        }

        return cases;
    }

    private static UnitHeat UnitOf(HeatUnit unit, List<HeatUnit> units, (BoundDesign Bound, Dictionary<string, HeatPlace> Places, Dictionary<string, HeatLoad> Racks, double Altitude) with)
    {
        var place = unit.Space is { } id ? with.Places.GetValueOrDefault(id) : null;
        var cabinet = unit.Rack?.Cabinet is { } model && with.Bound.Catalogue.Cabinets.TryGetValue(model, out var known) ? WarmBoxes.Of(known) : null;
        var inside = unit.Rack is { } rack ? with.Racks[rack.Id] : HeatLoad.Nothing;
        var share = unit.Rack is { Blanked: not true } ? InOpenRack : Elsewhere;
        var cases = new List<UnitCase>(place?.Cases.Count ?? 0);
        foreach (var one in place?.Cases ?? [])
        {
            if (CaseOf(unit, one, (cabinet, inside, share, with.Altitude)) is { } worked)
                cases.Add(worked);
        }

        cases.Sort((left, right) => right.Inlet.CompareTo(left.Inlet));
        var rated = unit.Body.MostAmbient?.Value.Value;
        return new UnitHeat(unit, place, cabinet, cases)
        {
            Share = share,
            InCabinet = inside,
            Most = rated is { } most ? ThermalClass.At(most, with.Altitude, MetresPerKelvin) : null,
            Question = Question(unit, place, (cabinet, inside, cases.Count)),
            Stacked = HeatUnits.StackedOn(unit, units),
        };
    }

    private static UnitCase? CaseOf(HeatUnit unit, AirCase air, (WarmBox? Cabinet, HeatLoad Inside, double Share, double Altitude) with)
    {
        if (air.Celsius is not { } celsius || air.MostCelsius is not { } most)
            return null;
        if (with.Cabinet is { } cabinet)
        {
            if (cabinet.Rise(with.Inside.OrdinaryWatts, celsius, with.Altitude) is not { } rise || cabinet.Rise(with.Inside.MostWatts, most, with.Altitude) is not { } mostRise)
                return null;
            (celsius, most) = (celsius + rise, most + mostRise);
        }

        var usual = FanLoop.Settle(unit, celsius, (unit.Load.OrdinaryWatts, unit.Load.Ports.Ordinary), (with.Share, with.Altitude));
        var greatest = FanLoop.Settle(unit, most, (unit.Load.MostWatts, unit.Load.Ports.Most), (with.Share, with.Altitude));
        return new UnitCase(air.Name, celsius, usual.Inlet, Math.Max(usual.Inlet, greatest.Inlet), usual.Fan);
    }

    // Asked only where the survey gives reason to: a place that shuts heat in, or one without a figure in which it grows hot or cold.
    private static string? Question(HeatUnit unit, HeatPlace? place, (WarmBox? Cabinet, HeatLoad Inside, int Known) with)
    {
        if (with.Known > 0 || place is null)
            return null;
        if (place.Cases.Count > 0 && with.Cabinet is { } cabinet)
            return cabinet.Question ?? with.Inside.Question;
        if (place.Box is { } box)
        {
            return place.Space.Enclosure?.Beside is null ? $"how warm does it get in {place.Space.Id}? leave a thermometer there over a weekend, or write beside which room it is"
                : place.Cases.Count == 0 ? $"how warm does it get in {place.Space.Enclosure.Beside}? {place.Space.Id} is warmer than that"
                : box.Question ?? place.Load.Question;
        }

        return place.Space.Kind is "loft" or "plant room" or "outdoors" ? $"how warm and how cold does it get in {place.Space.Id}?" : null;
    }
}

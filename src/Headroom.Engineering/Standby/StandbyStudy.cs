using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>Applies the physics of standby supplies and of the restart to a bound design, with what power worked out handed on.</summary>
public static class StandbyStudy
{
    /// <summary>A year as files write it [s].</summary>
    internal const double SecondsPerYear = 31557600;

    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="power">What power worked out for it.</param>
    /// <returns>The result; entries are made from it by <see cref="StandbyLedger"/>.</returns>
    public static StandbyResult Of(BoundDesign bound, PowerResult power)
    {
        var supplies = new List<StandbySupply>(bound.Design.Standby.Count);
        foreach (var placed in bound.Design.Standby)
        {
            if (placed.Model is { } model && bound.Catalogue.Standby.TryGetValue(model, out var found))
                supplies.Add(Supply(bound, power, (placed, found)));
        }

        var restart = RestartStudy.Of(bound, power);
        return new StandbyResult(bound, supplies, KeptServices.Of(bound, restart), restart);
    }

    private static StandbySupply Supply(BoundDesign bound, PowerResult power, (PlacedStandby Placed, StandbyModel Model) of)
    {
        var units = new FedUnits(power, of.Placed);
        var battery = of.Model.Battery is { } name ? bound.Catalogue.Batteries.GetValueOrDefault(name) : null;
        var heaviest = units.Count > 0 ? units.Heaviest() : null;
        var place = BatteryPlace.Of(SpaceOf(bound.Job, of.Placed.Standing.In));
        var supply = new StandbySupply
        {
            Placed = of.Placed,
            Model = of.Model,
            Battery = battery,
            Units = units,
            Fed = units.All(),
            Wanted = of.Placed.Wanted ?? bound.Job.Policy.Outage.Runtime,
            State = heaviest?.State ?? PowerState.Typical,
            Table = BatteryTable.Of(of.Model, battery),
            Place = place,
            KeepsLow = KeptWay.KeepsLow(bound),
            LifeYears = battery?.Life is { } life ? life.Value.Value / SecondsPerYear * (battery.Chemistry == "lead" ? BatteryDerating.FloatLife(place.Mean) : 1) : null,
        };
        supply = supply with { Question = Question(supply, heaviest is not null) };
        if (supply.Question is not null || heaviest is null)
            return supply;
        supply = supply with { Stages = Stages(units, heaviest.Value, of.Placed.Sheds ?? []) };
        return supply with { Cases = Cases(supply) };
    }

    private static List<LoadStage> Stages(FedUnits units, (PowerState State, double Watts) all, IReadOnlyList<ShedStage> sheds)
    {
        var stages = new List<LoadStage>(sheds.Count + 1) { new(0, all.Watts) };
        var gone = new List<Priority>(2);
        foreach (var shed in sheds)
        {
            gone.Add(shed.Priority);
            if (units.WattsIn(all.State, priority => !gone.Contains(priority)) is { } watts)
                stages.Add(new(shed.After.Value.Value, watts));
        }

        return stages;
    }

    private static List<RuntimeCase> Cases(StandbySupply supply)
    {
        var cold = supply.Table!.IsLithium ? BatteryDerating.LithiumTemperature(supply.Place.Coldest) : BatteryDerating.LeadTemperature(supply.Place.Coldest);
        var aged = supply.PastLife ? BatteryDerating.PastLife : BatteryDerating.EndOfLife;
        var cases = new List<RuntimeCase>(4) { Case(supply, "new, at 25 °C", 1) };
        if (supply.AgeYears is { } age && supply.LifeYears is { } life)
            cases.Add(Case(supply, "at its age now, at 25 °C", BatteryDerating.Age(age, life)));
        cases.Add(Case(supply, supply.PastLife ? "past its life, at 25 °C" : "aged, at 25 °C", aged));
        cases.Add(Case(supply, "aged and cold", aged * cold));
        return cases;
    }

    private static RuntimeCase Case(StandbySupply supply, string name, double? derating)
    {
        if (derating is not { } factor)
            return new(name, null, null, null);
        var stages = supply.OnTable(factor);
        var used = StagedRuntime.ByShareUsed(supply.Table!.Table, stages);
        return new(name, factor, used, stages.Length == 1 ? used : StagedRuntime.BySections(supply.Table.Table, stages));
    }

    private static string? Question(StandbySupply supply, bool loadKnown)
    {
        if (supply.Units.Count == 0)
            return $"what hangs on {supply.Placed.Id}? write 'fed-by: {supply.Placed.Id}' at its switches";
        foreach (var unit in supply.Fed)
        {
            if (unit.Question is { } question)
                return question;
        }

        return !loadKnown ? "a draw of a device is missing: see its entry"
            : supply.Table is null ? $"how many minutes does {supply.Model.Id} hold at two loads, or what battery is in it? its sheet or its lid says"
            : double.IsNaN(supply.Efficiency) ? $"how efficient is {supply.Model.Id} on battery? its sheet says"
            : null;
    }

    private static Space? SpaceOf(Job job, string? id)
    {
        foreach (var rack in job.Survey.Racks)
        {
            if (rack.Id == id)
                id = rack.In;
        }

        foreach (var space in job.Survey.Spaces)
        {
            if (space.Id == id)
                return space;
        }

        return null;
    }
}

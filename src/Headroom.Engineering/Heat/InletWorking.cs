using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Works out the air at an inlet on paper.</summary>
internal static class InletWorking
{
    private const double SecondsPerHour = 3600;

    /// <summary>The working.</summary>
    public static Working Of(UnitHeat unit, HeatResult result, LedgerEntry entry, WorkingInput reserve)
    {
        var (inputs, steps) = (new List<WorkingInput>(), new List<WorkingStep>());
        if (unit is { Worst: { } worst, Place: { } place })
        {
            var air = place.In(worst.Name);
            Place(place, air, inputs, steps);
            Cabinet(unit, worst, air, (inputs, steps));
            Fans(unit, worst, (inputs, steps));
            steps.Add(new("air at the inlet", "the sum", worst.Inlet, "°C"));
            if (worst.MostInlet > worst.Inlet + 0.05)
                steps.Add(new("at the greatest load", "the same with all at its most", worst.MostInlet, "°C"));
        }

        inputs.Add(new("rated for, at its inlet", unit.Unit.Body.MostAmbient?.Value.Value, "°C", Origins.Of(unit.Unit.Body.MostAmbient)));
        if (result.Altitude > ThermalClass.From)
            steps.Add(new("rating at this height", $"less 1 K for each 300 m of {Words.Of(result.Altitude)} m above 900 m", unit.Most, "°C"));
        inputs.Add(reserve);
        steps.AddRange(LifeFigures.StepsOf(unit));
        return new(
            "inlet = air of the place + rise of its cabinet + f / (1 − f) · rise of its own air; of a cupboard: air around it + rise, P = ρ c V ΔT + U A ΔT; what is written of it and what is worked out: the higher counts",
            inputs, steps,
            "balance of heat; walls: ISO 6946 in its order, enclosures: IEC TR 60890 areas, vents: stack effect with Cd 0.6, all from memory; share that comes back: common practice, no source; the loop of inlet, fan level and flow ends when a level drives itself, or says that it does not settle");
    }

    private static void Place(HeatPlace place, AirCase? air, List<WorkingInput> inputs, List<WorkingStep> steps)
    {
        var id = place.Space.Id;
        if (air?.WrittenCelsius is { } written)
            inputs.Add(new($"air in {id}, {air.Name}, as written", written, "°C", Origins.Of(air.Written)));
        if (place.Box is not { } box || air?.Around is not { } around)
            return;
        inputs.Add(new($"air in {place.Space.Enclosure?.Beside}, {air.Name}", around, "°C", "survey"));
        inputs.Add(new($"heat left in {id} in an ordinary hour", place.Load.OrdinaryWatts, "W", place.Load.Question ?? place.Load.Origin));
        inputs.Add(new($"faces of {id} that touch the air", box.SquareMetres, "m²", box.Question ?? "survey"));
        inputs.Add(new("U, what a square metre lets through", box.Coefficient, "W/(m²·K)", box.Question ?? box.How));
        if (box.VentArea > 0)
        {
            inputs.Add(new("both vents as one, free", 1e4 * box.VentArea, "cm²", Origins.Of(place.Space.Enclosure?.Vents)));
            inputs.Add(new("height between their middles", box.VentsApart, "m", Origins.Of(place.Space.Enclosure?.VentsApart)));
        }

        if (air.Rise is { } rise)
        {
            if (box.VentArea > 0)
                steps.Add(new("air through the vents", "0.6 A √(2 g h ΔT / Ti)", SecondsPerHour * Vents.Flow(box.VentArea, box.VentsApart, rise, around), "m³/h"));
            steps.Add(new($"rise in {id}", box.VentArea > 0 ? "where what leaves by faces and air is what is left inside" : "P / (U A)", rise, "K"));
            steps.Add(new($"air in {id}, worked out", $"{HeatWords.Tenth(around)} + {HeatWords.Tenth(rise)}", around + rise, "°C"));
        }

        steps.Add(new($"air in {id}", air.WorkedCounts ? "as worked out" : "as written", air.Celsius, "°C"));
    }

    private static void Cabinet(UnitHeat unit, UnitCase worst, AirCase? air, (List<WorkingInput> Inputs, List<WorkingStep> Steps) to)
    {
        if (unit.Cabinet is not { } cabinet)
            return;
        to.Inputs.Add(new($"heat left in cabinet {unit.Unit.Rack?.Cabinet}", unit.InCabinet.OrdinaryWatts, "W", unit.InCabinet.Question ?? unit.InCabinet.Origin));
        to.Inputs.Add(new("U A of the cabinet", cabinet.WattsPerKelvin, "W/K", cabinet.Question ?? cabinet.How));
        to.Steps.Add(new("rise in the cabinet", "by faces and vents", worst.Celsius - (air?.Celsius ?? worst.Celsius), "K"));
    }

    private static void Fans(UnitHeat unit, UnitCase worst, (List<WorkingInput> Inputs, List<WorkingStep> Steps) to)
    {
        if (worst.Fan is not { Flow: { } flow, Rise: { } rise } fan)
            return;
        to.Inputs.Add(new($"heat {unit.Unit.Id} leaves in its air", unit.Unit.Load.OrdinaryWatts, "W", unit.Unit.Load.Origin));
        to.Inputs.Add(new($"air it moves at level {fan.Level}", SecondsPerHour * flow, "m³/h", "catalogue"));
        to.Inputs.Add(new("f, share of it that comes back", 100 * unit.Share, "%", "common practice, no source"));
        to.Steps.Add(new("rise of its own air", "P / (ρ c V)", rise, "K"));
        to.Steps.Add(new("what comes back", "f / (1 − f) · that", fan.Returned, "K"));
    }
}

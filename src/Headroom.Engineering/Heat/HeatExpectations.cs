using Headroom.Domain.Jobs;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering.Heat;

/// <summary>What the study of heat expects of readings of temperature, in a space or at the inlet of a unit.</summary>
internal sealed class HeatExpectations(HeatResult result) : IExpectations
{
    // Half the interval of a thermometer or logger where none was written: common practice, no source [K].
    private const double Thermometer = 1;

    // Half an interval of a rise that was worked out, as a share of it (estimate); air that was written is as good as a thermometer.
    private const double RiseSpread = 0.3;

    /// <inheritdoc/>
    public Expectation? Of(Reading reading)
    {
        if (reading.What != "temperature")
            return null;
        foreach (var unit in result.Units)
        {
            if (unit.Unit.Id == reading.Where && unit.Worst is not null)
                return AtInlet(unit, reading);
        }

        // A reading of a place stands beside the unit in it that has least left.
        UnitHeat? least = null;
        foreach (var unit in result.Units)
        {
            if (unit.Place?.Space.Id == reading.Where && unit.Worst is not null && unit.Most is not null
                && !(least is not null && least.Most - least.Worst!.Inlet <= unit.Most - unit.Worst.Inlet))
                least = unit;
        }

        return least is null ? null : InPlace(least, reading);
    }

    private static Expectation AtInlet(UnitHeat unit, Reading reading)
    {
        var one = CaseOf(reading, unit) is { } name ? unit.In(name) : null;
        var air = one is null ? null : unit.Place?.In(one.Name);
        return Expected(unit, one?.Inlet, one is null ? 0 : RiseSpread * (one.Inlet - (air?.WorkedCounts == false ? air.Celsius : air?.Around) ?? 0)) with
        {
            OwnQuantity = one is not null && ReferenceEquals(one, unit.Worst),
        };
    }

    private static Expectation InPlace(UnitHeat unit, Reading reading)
    {
        var air = CaseOf(reading, unit) is { } name ? unit.Place!.In(name) : null;
        return Expected(unit, air?.Celsius, air is { WorkedCounts: true, Rise: { } rise } ? RiseSpread * rise : Thermometer);
    }

    // Without a case the only one there is; of several nobody knows which was meant.
    private static string? CaseOf(Reading reading, UnitHeat unit)
    {
        var cases = unit.Place?.Cases ?? [];
        if (reading.While is null)
            return cases.Count == 1 ? cases[0].Name : null;
        foreach (var one in cases)
        {
            if (reading.While.Contains(one.Name, StringComparison.OrdinalIgnoreCase))
                return one.Name;
        }

        return null;
    }

    private static Expectation Expected(UnitHeat unit, double? value, double plusMinus) => new(
        $"{HeatLedger.Discipline}/{unit.Unit.Id}/inlet", value, plusMinus, OwnQuantity: false, IsLimit: false,
        "more heat in there than written, less air through the vents, or a thermometer in the warm air of an outlet",
        "a door that stood open, or a reading before it had settled: leave it closed for four time constants and read again")
    {
        InstrumentPlusMinus = Thermometer,
    };
}

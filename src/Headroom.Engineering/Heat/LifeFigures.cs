using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>How long fans, capacitors and batteries last in the air there is: a range each, and said to be rough.</summary>
internal static class LifeFigures
{
    private const double HoursPerYear = 8766;

    /// <summary>The figures of a unit of which the air is known.</summary>
    public static IEnumerable<Figure> OfUnit(UnitHeat unit) => LifeRanges.Of(unit).Select(range => new Figure(
        $"{HeatLedger.Discipline}/{unit.Unit.Id}/{range.Quantity}", unit.Unit.Id, range.What, Years(range.ShortestHours), "years", null, () => Work(range))
    {
        UpTo = Years(range.LongestHours) > Years(range.ShortestHours) ? Years(range.LongestHours) : null,
    });

    /// <summary>The ranges as steps of a working.</summary>
    public static IEnumerable<WorkingStep> StepsOf(UnitHeat unit) => LifeRanges.Of(unit).SelectMany(range => new[]
    {
        new WorkingStep(range.What, $"at least, at {HeatWords.Tenth(range.Celsius)} °C", Years(range.ShortestHours), "years"),
        new WorkingStep(range.What, "at most", Years(range.LongestHours), "years"),
    });

    private static double Years(double hours) => Math.Round(hours / HoursPerYear, 1);

    private static Working Work(LifeRange range) => new(
        range.Formula,
        [.. range.Inputs, new($"air {range.Where}", range.Celsius, "°C", $"this study, case '{range.Case}'")],
        [.. range.Ways.Select(way => new WorkingStep(way.How, range.What, Years(way.Hours), "years")),
            new("range", range.Remark, Years(range.ShortestHours), "years"), new("to", "", Years(range.LongestHours), "years")],
        range.Source);
}

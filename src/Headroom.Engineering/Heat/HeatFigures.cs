using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>Figures of heat and air that have no limit of their own.</summary>
internal static class HeatFigures
{
    /// <summary>3.412142 BTU/h to the watt.</summary>
    public const double BtuPerWatt = 3.412142;

    private const double SecondsPerHour = 3600;

    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(HeatResult result) => result.Places.SelectMany(place => OfPlace(place, result)).Concat(result.Units.SelectMany(LifeFigures.OfUnit)).Concat(result.Units.SelectMany(OfUnit));

    private static IEnumerable<Figure> OfPlace(HeatPlace place, HeatResult result)
    {
        var id = place.Space.Id;
        yield return Figure(id, ("cooling", "heat to carry off, at most"), (BtuPerWatt * place.Load.MostWatts, "BTU/h", place.Load.Question), () => Cooling(place));
        if (place.Box is not { } box)
            yield break;
        var rise = place.Cases.Max(one => one.Rise);
        yield return Figure(id, ("rise", "warmer than around it, ordinary hour"), (rise, "K", rise is null ? box.Question ?? place.Load.Question ?? $"how warm is it around {id}?" : null), () => Rise(place, result));
        if (rise is > 0 && Warming.ConstantOf(place, rise.Value) is { } seconds)
            yield return Figure(id, ("settles", "until nine tenths of that are there"), (Settling.Until(0.9, seconds) / SecondsPerHour, "h", null), () => Settles(place, rise.Value));
    }

    private static IEnumerable<Figure> OfUnit(UnitHeat unit)
    {
        var id = unit.Unit.Id;
        if (unit.Worst?.Fan.Rise is { } rise)
            yield return Figure(id, ("outlet-rise", "air leaves it warmer by"), (rise, "K", null), () => Outlet(unit));
        if (unit.Unit is { IsFanless: true, Load.MostWatts: > 0 and var watts, Body: { Width: { } width, Depth: { } depth, Height: { } height } })
        {
            var area = width.Value.Value * depth.Value.Value + 2 * height.Value.Value * (width.Value.Value + depth.Value.Value);
            yield return Figure(id, ("case-rise", "its case above the air, at its most"), (ClosedBox.CaseRise(watts, area), "K", null), () => Case(unit, area));
        }
    }

    private static Figure Figure(string id, (string Quantity, string What) of, (double? Value, string Unit, string? Question) figure, Func<Working> work) =>
        new($"{HeatLedger.Discipline}/{id}/{of.Quantity}", id, of.What, figure.Value, figure.Unit, figure.Value is null ? figure.Question : null, work);

    private static Working Cooling(HeatPlace place) => new(
        "all that units and devices leave there; watts that leave on cables heat other rooms",
        [new($"left in {place.Space.Id} in an ordinary hour", place.Load.OrdinaryWatts, "W", place.Load.Origin), new("left at its most", place.Load.MostWatts, "W", place.Load.Origin)],
        [
            new("in the unit of cooling sheets", "3.412142 BTU/h to the watt", BtuPerWatt * place.Load.MostWatts, "BTU/h"),
            new("air for 10 K at the working point", "P / (ρ c · 10 K)", place.Load.MostWatts is { } watts ? SecondsPerHour * Air.FlowFor(watts, 10) : null, "m³/h"),
        ],
        "balance of heat; definition of the BTU");

    private static Working Rise(HeatPlace place, HeatResult result)
    {
        var worst = place.Cases.MaxBy(one => one.Rise);
        return new(
            "P = ρ c V ΔT + U A ΔT",
            [
                new("heat left inside in an ordinary hour", place.Load.OrdinaryWatts, "W", place.Load.Origin),
                new("U A of its faces", place.Box!.WattsPerKelvin, "W/K", place.Box.How),
                new("both vents as one, free", 1e4 * place.Box.VentArea, "cm²", "survey"),
                new("height above the sea", result.Altitude, "m", "survey, or none taken off"),
            ],
            [new("rise", worst is null ? "not known" : $"in case '{worst.Name}'", worst?.Rise, "K"), new("under the roof", "a third to a half more there (common practice, no source)", 1.4 * worst?.Rise, "K")],
            "balance of heat; walls: ISO 6946 in its order, from memory; good to about a third");
    }

    private static Working Settles(HeatPlace place, double rise) => new(
        "τ = C / G, nine tenths after 2.3 τ",
        [new("C, equipment and walls", Warming.JoulesPerKelvin(place), "J/K", "2500 J/K for equipment and 7500 J/K for each m² of wall, estimates"), new("G, heat lost for a kelvin", place.Load.OrdinaryWatts / rise, "W/K", "this study")],
        [new("τ", "C / G", Warming.ConstantOf(place, rise) / SecondsPerHour, "h")],
        "first-order warming; a reading before that is not the final one");

    private static Working Outlet(UnitHeat unit) => new(
        "ΔT = P / (ρ c V)",
        [new("heat left in its air", unit.Unit.Load.OrdinaryWatts, "W", unit.Unit.Load.Origin), new($"air it moves at level {unit.Worst!.Fan.Level}", SecondsPerHour * unit.Worst.Fan.Flow, "m³/h", "catalogue")],
        [new("rise", "from both", unit.Worst.Fan.Rise, "K")],
        "balance of heat");

    private static Working Case(UnitHeat unit, double area) => new(
        "ΔT = P / (h A), h = 9 W/(m²·K)",
        [new("heat at its most", unit.Unit.Load.MostWatts, "W", unit.Unit.Load.Origin), new("all faces but the bottom", area, "m²", "catalogue")],
        [new("rise of the case", "from both", ClosedBox.CaseRise(unit.Unit.Load.MostWatts ?? 0, area), "K")],
        "still air and radiation of a small painted box, from memory (8 to 11); people touch metal up to some 60 °C for a moment, from memory");
}

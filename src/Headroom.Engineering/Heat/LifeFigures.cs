using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>How long fans and batteries last in the air there is: the short end of a range, and said to be rough.</summary>
internal static class LifeFigures
{
    private const double HoursPerYear = 8766;
    private const double SecondsPerHour = 3600;

    // A battery's life is declared for 20 to 25 °C; the warmer end is taken, on the long side by a tenth or so.
    private const double BatteryCelsius = 25;

    // A supply's capacitors: 5000 h at 105 °C, 30 K warmer than the air at the inlet (assumed).
    private const double CapacitorHours = 5000;
    private const double CapacitorCelsius = 105;
    private const double CapacitorAbove = 30;

    /// <summary>The figures of a unit of which the air is known.</summary>
    public static IEnumerable<Figure> OfUnit(UnitHeat unit)
    {
        if (unit.Place is not { Cases: { Count: > 0 } cases } || unit.In(cases[0].Name) is not { } usual)
            yield break;
        var id = unit.Unit.Id;
        if (unit.Unit.Sound?.Fans is > 0)
            yield return Of(id, ("fan-life", "tenth of such fans gone, rough"), Fans(usual.Inlet), () => FanWorking(usual));
        if (unit.Unit.Load.OrdinaryWatts is > 0)
            yield return Of(id, ("capacitor-life", "life of its capacitors, rough"), Capacitors(usual.Inlet), () => CapacitorWorking(usual));
        if (unit.Unit.Battery?.Life is { } life)
            yield return Of(id, ("battery-life", "life of its battery, rough"), Batteries(life.Value.Value / SecondsPerHour, usual.Celsius), () => BatteryWorking(unit, usual));
    }

    private static Figure Of(string id, (string Quantity, string What) of, IReadOnlyList<double> hours, Func<Working> work) =>
        new($"{HeatLedger.Discipline}/{id}/{of.Quantity}", id, of.What, Math.Round(hours.Min() / HoursPerYear, 1), "years", null, work);

    private static List<double> Fans(double celsius) => [.. Life.Fan.Select(rule => Life.At(Life.FanHours, Life.FanCelsius, celsius, rule))];

    private static List<double> Capacitors(double celsius) =>
        [Math.Min(Life.MostCapacitorHours, Life.At(CapacitorHours, CapacitorCelsius, celsius + CapacitorAbove, Life.Capacitor))];

    // Cooler than declared is not counted as a gain: batteries age by the calendar as well.
    private static List<double> Batteries(double hours, double celsius) =>
        [.. Life.Battery.Select(rule => Life.At(hours, BatteryCelsius, Math.Max(BatteryCelsius, celsius), rule))];

    private static Working FanWorking(UnitCase usual) => new(
        "L10 at 40 °C, times 1.5 or 2 for every 10 K, or 2 for every 15 K, cooler",
        [new("L10 of a ball-bearing fan at 40 °C", Life.FanHours, "h", "assumed where nothing is declared; a sleeve bearing has half of it"), new("air at the inlet", usual.Inlet, "°C", $"this study, case '{usual.Name}'")],
        [.. Life.Fan.Zip(Fans(usual.Inlet), (rule, hours) => new WorkingStep($"by {Words.Of(rule.Factor)} for {Words.Of(rule.Kelvins)} K", "L10", hours / HoursPerYear, "years")),
            new("to be taken", "the shortest; dust and mounting take more than these rules differ", Fans(usual.Inlet).Min() / HoursPerYear, "years")],
        "three rules of fan suppliers, seen in trade pages; they differ by 1.8 at 60 °C");

    private static Working CapacitorWorking(UnitCase usual) => new(
        "L = L0 · 2^((T0 − T) / 10), at most 15 years",
        [new("L0 at 105 °C", CapacitorHours, "h", "assumed"), new("capacitor above the air at the inlet", CapacitorAbove, "K", "assumed"), new("air at the inlet", usual.Inlet, "°C", $"this study, case '{usual.Name}'")],
        [new("life", "by the rule", Capacitors(usual.Inlet)[0] / HoursPerYear, "years")],
        "common practice of the capacitor trade; 15 years is the most a claim is worth");

    private static Working BatteryWorking(UnitHeat unit, UnitCase usual) => new(
        "design life halves for every 8 to 10 K above 25 °C; cooler is no gain",
        [new("design life", unit.Unit.Battery!.Life!.Value.Value / SecondsPerHour / HoursPerYear, "years", Origins.Of(unit.Unit.Battery.Life)), new("air it stands in", usual.Celsius, "°C", $"this study, case '{usual.Name}'")],
        [.. Life.Battery.Zip(Batteries(unit.Unit.Battery.Life.Value.Value / SecondsPerHour, usual.Celsius), (rule, hours) => new WorkingStep($"halved for {Words.Of(rule.Kelvins)} K", "life", hours / HoursPerYear, "years"))],
        "common practice, no source");
}

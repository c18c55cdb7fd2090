using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>How long the parts of a unit last in the air of its usual case: the first that is written.</summary>
internal static class LifeRanges
{
    private const double SecondsPerHour = 3600;
    private const double HoursPerYear = 8766;

    // A battery's life is declared for 20 to 25 °C; the warmer end is taken, on the long side by a tenth or so.
    private const double BatteryCelsius = 25;

    // A supply's capacitors at 105 °C, and how much warmer than the air at the inlet they are: cheap and hot, good and cool (assumed).
    private const double CapacitorCelsius = 105;
    private static readonly (string What, double Hours, double Above)[] Capacitors = [("2000 h, 30 K above the inlet", 2000, 30), ("5000 h, 20 K above the inlet", 5000, 20)];

    // A sleeve bearing has about half of a ball bearing.
    private static readonly (string What, double Share)[] Bearings = [("sleeve bearing", 0.5), ("ball bearing", 1)];

    /// <summary>The ranges of a unit; none where its air is not known.</summary>
    public static IEnumerable<LifeRange> Of(UnitHeat unit)
    {
        if (unit.Place is not { Cases: { Count: > 0 } cases } || unit.In(cases[0].Name) is not { } usual)
            yield break;
        if (unit.Unit.Sound?.Fans is > 0)
            yield return Fan(usual);
        if (unit.Unit.Load.OrdinaryWatts is > 0)
            yield return Capacitor(usual);
        if (unit.Unit.Battery?.Life is { } life)
            yield return Battery(usual, life);
    }

    private static LifeRange Fan(UnitCase usual) => new(
        "fan-life", "fan bearings last, rough",
        [.. Bearings.SelectMany(bearing => Life.Fan.Select(rule => new LifeWay(
            $"{bearing.What}, by {Words.Of(rule.Factor)} for {Words.Of(rule.Kelvins)} K", Life.At(bearing.Share * Life.FanHours, Life.FanCelsius, usual.Inlet, rule))))])
    {
        Formula = "L10, until a tenth of such fans is gone: that at 40 °C, times 1.5 or 2 for every 10 K, or 2 for every 15 K, cooler",
        Inputs = [new("L10 of a ball bearing at 40 °C", Life.FanHours, "h", "assumed where nothing is declared"), new("L10 of a sleeve bearing", Life.FanHours / 2, "h", "assumed, half of it")],
        Source = "three rules of fan suppliers, seen in trade pages; they differ by 1.8 at 60 °C",
        Remark = "dust and mounting take more than the rules differ",
        Celsius = usual.Inlet,
        Case = usual.Name,
    };

    private static LifeRange Capacitor(UnitCase usual) => new(
        "capacitor-life", "capacitors last, rough",
        [.. Capacitors.Select(made => new LifeWay(made.What, Math.Min(Life.MostCapacitorHours, Life.At(made.Hours, CapacitorCelsius, usual.Inlet + made.Above, Life.Capacitor))))])
    {
        Formula = "L = L0 · 2^((T0 − T) / 10), at most 15 years",
        Inputs = [.. Capacitors.Select(made => new Domain.Ledgers.WorkingInput($"L0 at 105 °C of one that is {Words.Of(made.Above)} K above the inlet", made.Hours, "h", "assumed: nobody declares what is inside"))],
        Source = "common practice of the capacitor trade; 15 years is the most a claim is worth",
        Celsius = usual.Inlet,
        Case = usual.Name,
    };

    // Cooler than declared is not counted as a gain: batteries age by the calendar as well.
    private static LifeRange Battery(UnitCase usual, Domain.Quantities.Given<Domain.Quantities.Seconds> life) => new(
        "battery-life", "its battery lasts, rough",
        [.. Life.Battery.Select(rule => new LifeWay($"halved for {Words.Of(rule.Kelvins)} K", Life.At(life.Value.Value / SecondsPerHour, BatteryCelsius, Math.Max(BatteryCelsius, usual.Celsius), rule)))])
    {
        Formula = "design life halves for every 8 to 10 K above 25 °C; cooler is no gain",
        Inputs = [new("design life", life.Value.Value / SecondsPerHour / HoursPerYear, "years", Origins.Of(life))],
        Source = "common practice, no source",
        Where = "it stands in",
        Celsius = usual.Celsius,
        Case = usual.Name,
    };
}

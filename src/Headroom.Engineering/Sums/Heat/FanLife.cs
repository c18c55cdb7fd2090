using Headroom.Domain.Quantities;
using Headroom.Engineering.Heat;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How long a fan lasts in other air.</summary>
internal static class FanLife
{
    private const double SecondsPerHour = 3600;

    private static readonly QuantityInput Declared = new("declared", "time after which a tenth of them is gone", Seconds.Units, new(1000, 200_000, "h")) { Default = "60000 h", DefaultWhy = "a ball bearing at 40 °C, seen in trade pages; a sleeve bearing half of it" };
    private static readonly QuantityInput At = new("at", "the air for which that holds", Celsius.Units, new(0, 100, "°C")) { Default = "40 C", DefaultWhy = "what most sheets take" };
    private static readonly QuantityInput To = new("to", "the air it runs in", Celsius.Units, new(-20, 100, "°C"));

    private static readonly SumOutput Short = new("shortest", "h", "by the rule that gives least");
    private static readonly SumOutput Long = new("longest", "h", "by the rule that gives most");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fan-life",
        Discipline = HeatSums.Discipline,
        Answers = "how long does a fan last in warmer air, roughly?",
        Inputs = [To, Declared, At],
        Outputs = [Short, Long],
        Formula = "L2 = L1 · factor^((T1 − T2) / kelvins): 1.5 for 10 K, 2 for 15 K, 2 for 10 K",
        Source = "three rules of fan suppliers, trade pages; they differ by 1.8 at 60 °C",
        Example = "to 32 C",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var hours = Life.Fan.Select(rule => Life.At(given[Declared] / SecondsPerHour, given[At], given[To], rule)).ToList();
        return new SumAnswer(
            $"Roughly {new Told(1000 * Math.Round(hours.Min() / 1000), "h")} to {new Told(1000 * Math.Round(hours.Max() / 1000), "h")} until a tenth of such fans is gone.",
            [Short.Is(hours.Min()), Long.Is(hours.Max())],
            [.. Life.Fan.Zip(hours, (rule, life) => new Domain.Ledgers.WorkingStep($"by {Words.Of(rule.Factor)} for {Words.Of(rule.Kelvins)} K", $"({Words.Of(given[At])} − {Words.Of(given[To])}) / {Words.Of(rule.Kelvins)}", life, "h"))])
        {
            Notes = [$"Dust and a sleeve bearing with its shaft upright take more than these rules differ. It is no time between failures: half of them last about seven times as long."],
        };
    }
}

using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>What a fan gives and how loud it is at another speed.</summary>
internal static class FanSpeed
{
    // Below a third of full speed motor and bearings take over (common practice).
    private const double LawHoldsFrom = 0.3;

    private static readonly QuantityInput From = new("from", "speed it runs at", RevolutionsPerMinute.Units, new(100, 40_000, "rpm"));
    private static readonly QuantityInput To = new("to", "speed it is to run at", RevolutionsPerMinute.Units, new(100, 40_000, "rpm"));
    private static readonly QuantityInput Flow = new("flow", "what it moves now", CubicMetresPerHour.Units, new(0.1, 5000, "m3/h")) { IsOptional = true };
    private static readonly QuantityInput Level = new("level", "how loud it is now", SoundPressure.Units, new(0, 120, "dB(A)")) { IsOptional = true };

    private static readonly SumOutput Change = new("level-change", "dB", "change of its level, on the safe side");
    private static readonly SumOutput Guess = new("best-guess", "dB", "change of its level, as a best guess");
    private static readonly SumOutput FlowShare = new("flow-share", "%", "air of what it moves now");
    private static readonly SumOutput Pressure = new("pressure-share", "%", "pressure of what it gives now");
    private static readonly SumOutput Shaft = new("power-share", "%", "power of what it takes now");
    private static readonly SumOutput FlowThen = new("flow-then", "m3/h", "what it moves then");
    private static readonly SumOutput LevelThen = new("level-then", "dB(A)", "how loud it is then, on the safe side");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fan-speed",
        Discipline = AcousticSums.Discipline,
        Answers = "what does a fan give, take and sound like at another speed?",
        Inputs = [From, To, Flow, Level],
        Outputs = [Change, Guess, FlowShare, Pressure, Shaft, FlowThen, LevelThen],
        Formula = "flow ~ n, pressure ~ n², power ~ n³; ΔL = K lg(n2 / n1), K = 50 for a gain, 60 for a worsening, 55 as best guess",
        Source = "affinity laws of fans; fan sound law: 50 seen in trade pages, 55 and 60 from memory",
        Example = "from 8000 rpm to 5000 rpm level 44 dBA",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var ratio = given[To] / given[From];
        var (flow, pressure, power) = FanLaws.Affinity(ratio);
        var slope = ratio > 1 ? FanLaws.ForWorse : FanLaws.ForGain;
        var change = FanLaws.LevelChange(ratio, slope);
        var figures = new List<SumFigure>
        {
            Change.Is(change), Guess.Is(FanLaws.LevelChange(ratio, FanLaws.BestGuess)), FlowShare.Is(100 * flow), Pressure.Is(100 * pressure), Shaft.Is(100 * power),
        };
        if (given.Maybe(Flow) is { } now)
            figures.Add(FlowThen.Is(now * flow));
        if (given.Maybe(Level) is { } level)
            figures.Add(LevelThen.Is(level + change));
        return new SumAnswer(
            $"It is {(change < 0 ? "quieter" : "louder")} by {Told.Level(Math.Abs(change))} and moves {new Told(100 * flow, "%")} of the air.",
            figures,
            [
                new("n2 / n1", $"{Words.Of(given[To])} / {Words.Of(given[From])}", ratio, ""),
                new("ΔL", $"{Words.Of(slope)} lg {Words.Of(ratio)}", change, "dB"),
                new("pressure", $"{Words.Of(ratio)}²", 100 * pressure, "%"),
                new("power", $"{Words.Of(ratio)}³", 100 * power, "%"),
            ])
        {
            Notes =
            [
                .. ratio < 1 ? (FormattableString[])[$"Less air leaves it warmer inside: see that the temperature allows it before the fan is slowed down."] : [],
                .. ratio < LawHoldsFrom ? (FormattableString[])[$"Below about 30 % of its speed motor and bearings take over, and less is gained than this says (common practice, no source)."] : [],
            ],
        };
    }
}

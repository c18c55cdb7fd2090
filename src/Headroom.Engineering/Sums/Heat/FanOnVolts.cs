using Headroom.Domain.Quantities;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>What a fan does on other volts than it is made for.</summary>
internal static class FanOnVolts
{
    private static readonly QuantityInput Rated = new("rated", "volts it is made for", Volts.Units, new(3, 60, "V"));
    private static readonly QuantityInput There = new("volts", "volts there are", Volts.Units, new(1, 60, "V"));
    private static readonly QuantityInput Start = new("start", "volts from which it starts", Volts.Units, new(1, 60, "V")) { IsOptional = true };
    private static readonly QuantityInput Drop = new("drop", "what its electronics keep", Volts.Units, new(0, 1, "V")) { Default = "0 V", DefaultWhy = "0 to 1 V; none is the louder end" };

    private static readonly SumOutput Speed = new("speed", "%", "speed, and air, of those at its rating");
    private static readonly SumOutput Change = new("level-change", "dB", "change of its level");
    private static readonly SumOutput Heat = new("winding-heat", "%", "heat in its winding, at most this");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fan-on-volts",
        Discipline = HeatSums.Discipline,
        Answers = "what does a fan do on other volts than it is made for?",
        Inputs = [Rated, There, Start, Drop],
        Outputs = [Speed, Change, Heat],
        Formula = "n ~ V − V_d; ΔL = 50 lg(n2 / n1); heat ~ V²; up to a tenth above its rating, else refused",
        Source = "speed by volts: trade pages; a tenth on labels: common practice; fan sound law",
        Example = "rated 12 V volts 9 V",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var fit = FanVolts.Fit(given[Rated], given[There], given.Maybe(Start));
        var speed = FanVolts.SpeedRatio(given[Rated], given[There], given[Drop]);
        double? change = speed > 0 ? FanLaws.LevelChange(speed) : null;
        var heat = FanVolts.WindingHeat(given[Rated], given[There]);
        IReadOnlyList<Domain.Ledgers.WorkingStep> steps =
        [
            new("speed", $"({Words.Of(given[There])} − {Words.Of(given[Drop])}) / ({Words.Of(given[Rated])} − {Words.Of(given[Drop])})", 100 * speed, "%"),
            new("heat in the winding", $"({Words.Of(given[There])} / {Words.Of(given[Rated])})²", 100 * heat, "%"),
        ];
        IReadOnlyList<SumFigure> figures = [Speed.Is(100 * speed), Change.Is(change), Heat.Is(100 * heat)];
        return fit switch
        {
            FanFit.Hazard => new SumAnswer($"Refused: {new Told(given[There], "V")} on a fan made for {new Told(given[Rated], "V")} is a hazard; it is not quiet or loud, it burns out, and may smoke.", figures, steps) { Holds = false, Cautions = [CautionTable.OpenCase] },
            FanFit.MayNotStart => new SumAnswer($"It may not start: then it draws current, tries again and again, and moves nothing.", figures, steps) { Holds = false, Cautions = [CautionTable.OpenCase] },
            _ => new SumAnswer($"It turns at {new Told(Math.Round(100 * speed, 1), "%")} of its speed and moves as much less air.", figures, steps)
            {
                Notes = fit == FanFit.Slow ? [$"What starts when new may not start in some years; a switch may take a slow fan for a fault."] : [],
                Cautions = [CautionTable.OpenCase],
            },
        };
    }
}

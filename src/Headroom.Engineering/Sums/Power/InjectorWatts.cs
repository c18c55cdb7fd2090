using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;
using static Headroom.Engineering.Sums.Power.RunInputs;

namespace Headroom.Engineering.Sums.Power;

/// <summary>What an injector must give for a device at the end of a run.</summary>
internal static class InjectorWatts
{
    private static readonly QuantityInput Rated = new("rated", "watts the injector is rated for", Watts.Units, new(1, 200, "W")) { IsOptional = true };

    private static readonly SumOutput AtPort = new("port-watts", "W", "watts the injector gives");
    private static readonly SumOutput Left = new("left", "W", "left of what it is rated for");
    private static readonly SumOutput Amps = new("current", "mA", "current it gives");
    private static readonly SumOutput Lost = new("lost", "W", "lost in the run as heat");
    private static readonly SumOutput Far = new("far-end-volts", "V", "volts that reach the device");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "injector-watts",
        Discipline = PowerSums.Discipline,
        Answers = "how many watts must an injector give?",
        Inputs = [Draw, Feed, Length, Cable, Temperature, Pairs, Conductivity, Rated],
        Outputs = [AtPort, Left, Amps, Lost, Far],
        Formula = "P_port = P + I² R, I = P / V_far, V_far = (V + √(V² − 4 R P)) / 2",
        Source = $"constant-power load behind a resistance (circuit theory); {RunInputs.Source}",
        Example = "draw 18 W volts 48 V length 60 m cable 24 AWG rated 24 W",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (volts, watts, ohms) = (given[Feed], given[Draw], LoopOhms(given));
        if (ConstantPowerLoad.Solve(volts, ohms, watts) is not { } point)
        {
            return new SumAnswer(
                $"No injector of {new Told(volts, "V")} can do it: {new Told(watts, "W")} are more than the run can carry, {new Told(ConstantPowerLoad.MostWatts(volts, ohms), "W")}.",
                [AtPort.Is(null), Amps.Is(null), Lost.Is(null), Far.Is(null)],
                Steps(given)) { Holds = false, Cautions = [.. Cautions(given), .. CautionsOf(volts)] };
        }

        var figures = new List<SumFigure> { AtPort.Is(point.SourceWatts), Amps.Is(1000 * point.Amperes), Lost.Is(point.LostWatts), Far.Is(point.LoadVolts) };
        var left = given.Maybe(Rated) - point.SourceWatts;
        if (left is not null)
            figures.Insert(1, Left.Is(left));
        return new SumAnswer(Say(point.SourceWatts, given.Maybe(Rated)), figures, [.. Steps(given), .. FarEndVolts.Point((volts, ohms, watts), point)])
        {
            Holds = !(left < 0),
            Cautions = [.. Cautions(given), .. CautionsOf(volts)],
        };
    }

    private static FormattableString Say(double watts, double? rated) => rated is not { } there
        ? $"The injector must give {new Told(watts, "W")}."
        : watts <= there
            ? $"The injector must give {new Told(watts, "W")} of its {new Told(there, "W")}: {new Told(there - watts, "W")} are left."
            : (FormattableString)$"The injector must give {new Told(watts, "W")} and is rated for {new Told(there, "W")}: short by {new Told(watts - there, "W")}.";
}

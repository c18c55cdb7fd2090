using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;
using static Headroom.Engineering.Sums.Power.RunInputs;

namespace Headroom.Engineering.Sums.Power;

/// <summary>How many volts reach a device at the end of its run.</summary>
internal static class FarEndVolts
{
    private static readonly QuantityInput Least = new("least-volts", "volts the device needs", Volts.Units, new(1, 120, "V")) { IsOptional = true };

    private static readonly SumOutput Far = new("far-end-volts", "V", "volts that reach the device");
    private static readonly SumOutput Left = new("left", "V", "volts left above what the device needs");
    private static readonly SumOutput Current = new("current", "mA", "current round the run");
    private static readonly SumOutput Lost = new("lost", "W", "lost in the run as heat");
    private static readonly SumOutput AtPort = new("port-watts", "W", "watts the port gives");
    private static readonly SumOutput Most = new("most-watts", "W", "most the run can carry at all");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "far-end-volts",
        Discipline = PowerSums.Discipline,
        Answers = "how many volts reach a device at the end of its run?",
        Inputs = [Feed, Length, Cable, Draw, Temperature, Pairs, Conductivity, Least],
        Outputs = [Far, Left, Current, Lost, AtPort, Most],
        Formula = "V_far = (V + √(V² − 4 R P)) / 2; none when P is above V² / 4R",
        Source = $"constant-power load behind a resistance, the higher root (circuit theory); {RunInputs.Source}",
        Example = "volts 54 V length 82 m cable 23 AWG draw 13 W",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (volts, watts, ohms) = (given[Feed], given[Draw], LoopOhms(given));
        var most = ConstantPowerLoad.MostWatts(volts, ohms);
        var steps = Steps(given).Append(new WorkingStep("most the run can carry", $"{Words.Of(volts)}² / (4 · {Words.Of(ohms)})", most, "W"));
        var cautions = Cautions(given).Concat(CautionsOf(volts)).ToList();
        if (ConstantPowerLoad.Solve(volts, ohms, watts) is not { } point)
        {
            return new SumAnswer(
                $"There is no operating point: {new Told(watts, "W")} are more than the run can carry, {new Told(most, "W")}, so no voltage settles at the device.",
                [Far.Is(null), Current.Is(null), Lost.Is(null), AtPort.Is(null), Most.Is(most)],
                [.. steps, new("V_far", "none: the device asks more than the run can carry", null, "")]) { Holds = false, Cautions = cautions };
        }

        var figures = new List<SumFigure> { Far.Is(point.LoadVolts), Current.Is(1000 * point.Amperes), Lost.Is(point.LostWatts), AtPort.Is(point.SourceWatts), Most.Is(most) };
        if (given.Maybe(Least) is { } needed)
            figures.Insert(1, Left.Is(point.LoadVolts - needed));
        return new SumAnswer(Say(point, given.Maybe(Least)), figures, [.. steps, .. Point((volts, ohms, watts), point)])
        {
            Holds = !(point.LoadVolts < given.Maybe(Least)),
            Cautions = cautions,
        };
    }

    /// <summary>How the point where a device settles is worked out.</summary>
    public static IReadOnlyList<WorkingStep> Point((double Volts, double Ohms, double Watts) at, OperatingPoint point) =>
    [
        new("V_far", $"({Words.Of(at.Volts)} + √({Words.Of(at.Volts)}² − 4 · {Words.Of(at.Ohms)} · {Words.Of(at.Watts)})) / 2", point.LoadVolts, "V"),
        new("current", $"{Words.Of(at.Watts)} W / {Words.Of(point.LoadVolts)} V", 1000 * point.Amperes, "mA"),
        new("lost in the run", $"({Words.Of(point.Amperes)} A)² · {Words.Of(at.Ohms)} Ω", point.LostWatts, "W"),
        new("at the port", $"{Words.Of(at.Watts)} W + {Words.Of(point.LostWatts)} W", point.SourceWatts, "W"),
    ];

    private static FormattableString Say(OperatingPoint point, double? needed)
    {
        var far = new Told(point.LoadVolts, "V");
        if (needed is not { } least)
            return $"{far} reach the device; {new Told(point.LostWatts, "W")} are lost on the way.";
        var left = point.LoadVolts - least;
        return left >= 0
            ? $"{far} reach the device, which needs {new Told(least, "V")}: {new Told(left, "V")} are left."
            : (FormattableString)$"{far} reach the device, which needs {new Told(least, "V")}: short by {new Told(-left, "V")}.";
    }
}

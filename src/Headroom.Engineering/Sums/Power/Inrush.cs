using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Sums.Power;

/// <summary>Whether the input of a device charges before its port gives up.</summary>
internal static class Inrush
{
    private static readonly QuantityInput Capacitance = new("capacitance", "capacitance at the input of the device", Farads.Units, new(0.01, 10_000, "µF"));

    private static readonly QuantityInput Volts = new("volts", "volts at the port", Headroom.Domain.Quantities.Volts.Units, new(1, 120, "V"))
    {
        Default = "57 V",
        DefaultWhy = "the most a port may have (IEEE Std 802.3)",
    };

    private static readonly NumberInput Class = new("class", "class that is granted", new Bounds(0, 8)) { Default = "3", DefaultWhy = "the least current any class gets" };

    private static readonly SumOutput Time = new("time", "ms", "time to charge");
    private static readonly SumOutput Left = new("left", "ms", "left of the time the port gives");
    private static readonly SumOutput Most = new("most-capacitance", "µF", "most that charges in time");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "inrush",
        Discipline = PowerSums.Discipline,
        Answers = "does the input of a device charge before its port gives up?",
        Inputs = [Capacitance, Volts, Class],
        Outputs = [Time, Left, Most],
        Formula = "t = C V / I",
        Source = "IEEE Std 802.3, 33.3.7 and Tables 33-11, 145-16 (inrush current and time), from memory",
        Example = "capacitance 180 uF volts 54 V",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (farads, volts) = (given[Capacitance], given[Volts]);
        var amperes = StartUp.InrushAmperes((int)given[Class]).Least;
        var limit = 1000 * StartUp.DeviceInrushSeconds;
        var time = 1000 * StartUp.ChargeSeconds(farads, volts, amperes);
        var most = 1e6 * StartUp.MostFarads(StartUp.DeviceInrushSeconds, volts, amperes);
        return new SumAnswer(
            time <= limit
                ? $"The input charges in {new Told(time, "ms")}; the port gives it {new Told(limit, "ms")}, so {new Told(limit - time, "ms")} are left."
                : (FormattableString)$"The input takes {new Told(time, "ms")} to charge and the port gives it {new Told(limit, "ms")}: it is switched off, and tries again and again.",
            [Time.Is(time), Left.Is(limit - time), Most.Is(most)],
            [
                new("I the port allows", "standard, the least of its range", 1000 * amperes, "mA"),
                new("t", $"{Words.Of(1e6 * farads)} µF · {Words.Of(volts)} V / {Words.Of(1000 * amperes)} mA", time, "ms"),
                new("most in time", $"{Words.Of(1000 * amperes)} mA · {Words.Of(limit)} ms / {Words.Of(volts)} V", most, "µF"),
            ]) { Holds = time <= limit };
    }
}

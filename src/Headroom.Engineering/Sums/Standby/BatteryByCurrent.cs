using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>How long a lead battery holds a current, by the rough law.</summary>
internal static class BatteryByCurrent
{
    private static readonly QuantityInput Capacity = new("capacity", "as printed, for the rate", AmpereHours.Units, new(0.5, 5000, "Ah"));
    private static readonly QuantityInput Rate = new("rate", "the time for which the capacity is printed", Seconds.Units, new(1, 120, "h")) { Default = "20 h", DefaultWhy = "usual for small blocks" };
    private static readonly QuantityInput Current = new("current", "out of the battery", Amperes.Units, new(0.01, 1000, "A"));
    private static readonly NumberInput Exponent = new("exponent", "1.1 to 1.3 for sealed lead", new(1, 2)) { IsWhole = false, Default = "1.2", DefaultWhy = "middle of the usual range, from memory" };

    private static readonly SumOutput Hours = new("hours", "h", "how long it holds");
    private static readonly SumOutput Charge = new("charge", "Ah", "taken out by then");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "battery-by-current",
        Discipline = StandbySums.Discipline,
        Answers = "how long does a lead battery hold a current when no table is at hand?",
        Inputs = [Capacity, Rate, Current, Exponent],
        Outputs = [Hours, Charge],
        Formula = "t = H (C / (I H))^k",
        Source = "W. Peukert 1897 with the rate kept beside the capacity, from memory",
        Example = "capacity 8.4 Ah current 3.1 A",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var rate = given[Rate] / 3600;
        var hours = Peukert.Hours(given[Capacity], rate, given[Current], given[Exponent]);
        return new SumAnswer($"It holds {new Told(hours, "h")}, give or take a third.", [Hours.Is(hours), Charge.Is(hours * given[Current])],
        [
            new("t", $"{Words.Of(rate)} h · ({Words.Of(given[Capacity])} Ah / ({Words.Of(given[Current])} A · {Words.Of(rate)} h))^{Words.Of(given[Exponent])}", hours, "h"),
            new("charge", $"{Words.Of(hours)} h · {Words.Of(given[Current])} A", hours * given[Current], "Ah"),
        ]) { Notes = [$"Rough, ± 30 %, and only within about a decade of time around the rate: ask for the table of the block."] };
    }
}

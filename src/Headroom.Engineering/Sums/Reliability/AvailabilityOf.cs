using Headroom.Domain.Quantities;
using Headroom.Engineering.Failure;

namespace Headroom.Engineering.Sums.Reliability;

/// <summary>How long in a year something does not work.</summary>
internal static class AvailabilityOf
{
    private static readonly QuantityInput Parts = new("parts", "mean time between failures of each part in a row", Seconds.Units, new(100, 1e8, "h")) { IsList = true, ListExample = "200000 h, 2 x 100000 h" };
    private static readonly QuantityInput Repair = new("repair", "time until somebody is there with the part", Seconds.Units, new(0, 2000, "h")) { Default = "24 h", DefaultWhy = "the next day; common practice, no source" };
    private static readonly WordInput Twice = new("twice", "whether all of it stands there twice, side by side", "yes", "no") { Default = "no", DefaultWhy = "mostly it stands there once" };
    private static readonly QuantityInput Common = new("common", "share of failures that strike both at once", Share.Units, new(0, 100, "%")) { Default = "5 %", DefaultWhy = "IEC 61508-6, annex D gives 1 to 10 %, from memory; counted only where it stands there twice" };

    private static readonly SumOutput Works = new("works", "%", "share of the time that it works");
    private static readonly SumOutput Lost = new("lost", "h", "lost in a year");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "availability",
        Discipline = ReliabilitySums.Discipline,
        Answers = "how long in a year does it not work?",
        Inputs = [Parts, Repair, Twice, Common],
        Outputs = [Works, Lost],
        Formula = "A = Π MTBF / (MTBF + repair); twice: 1 − (((1 − β) U)² + β U)",
        Source = "textbooks; β: IEC 61508-6, annex D, from memory",
        Example = "parts 200000 h, 100000 h",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var repair = given[Repair] / 3600;
        var once = Availability.InARow(given.All(Parts).Select(seconds => Availability.Of(seconds / 3600, repair)));
        var twice = given.Word(Twice) == "yes";
        var share = twice ? Availability.SideBySide(once, given[Common]) : once;
        var steps = new List<Domain.Ledgers.WorkingStep> { new("in a row", "the product", 100 * once, "%") };
        if (twice)
            steps.Add(new("side by side", $"U = {Words.Of(1 - once)}, β = {Words.Of(100 * given[Common])} %", 100 * share, "%"));
        steps.Add(new("lost in a year", "8760 h · (1 − A)", Availability.HoursLost(share), "h"));
        return new SumAnswer($"{new Told(Availability.HoursLost(share), "h")} are lost in a year.", [Works.Is(100 * share), Lost.Is(Availability.HoursLost(share))], steps);
    }
}

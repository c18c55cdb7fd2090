using Headroom.Domain.Quantities;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>Whether a wall in front of an outlet chokes it.</summary>
internal static class OutletGap
{
    // From here on its own air does not come back either (common practice, no source) [m].
    private const double Wanted = 0.05;

    private static readonly QuantityInput Gap = new("gap", "from the outlet to the wall", Metres.Units, new(0, 1000, "mm"));
    private static readonly QuantityInput Opening = new("opening", "diameter of the opening", Metres.Units, new(10, 500, "mm")) { Default = "38 mm", DefaultWhy = "a fan of 40 mm" };

    private static readonly SumOutput Ring = new("ring-share", "%", "ring to the wall, of the opening");
    private static readonly SumOutput Least = new("least-gap", "mm", "gap at which the two are alike");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "outlet-gap",
        Discipline = HeatSums.Discipline,
        Answers = "is an outlet too close to a wall?",
        Inputs = [Gap, Opening],
        Outputs = [Ring, Least],
        Formula = "ring / opening = π D g / (π D² / 4) = 4 g / D",
        Source = "geometry; 50 mm or more is common practice, no source",
        Example = "gap 30 mm",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var ring = Grille.RingShare(given[Gap], given[Opening]);
        var choked = ring < 1;
        return new SumAnswer(
            choked ? $"Choked: the way out to the wall is {new Told(Math.Round(100 * ring), "%")} of the opening." : (FormattableString)$"The way out is {new Told(Math.Round(100 * ring), "%")} of the opening: the wall does not choke it.",
            [Ring.Is(100 * ring), Least.Is(1000 * given[Opening] / 4)],
            [new("ring over opening", $"4 · {Words.Of(1000 * given[Gap])} / {Words.Of(1000 * given[Opening])}", 100 * ring, "%")])
        {
            Holds = !choked,
            Notes = given[Gap] < Wanted ? [$"Ask for 50 mm or more: its warm air comes back to the inlet from a near wall (common practice, no source)."] : [],
        };
    }
}

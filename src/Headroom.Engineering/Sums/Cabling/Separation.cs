using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How far data cables are kept from mains.</summary>
internal static class Separation
{
    private static readonly NumberInput Circuits = new("circuits", "mains circuits beside it", new Bounds(0, 1000));
    private static readonly QuantityInput Rating = new("rating", "what each is fused for", Amperes.Units, new(1, 1000, "A")) { Default = "20 A", DefaultWhy = "circuits of up to 20 A count as one" };
    private static readonly WordInput Phases = new("phases", "of each circuit", "1", "3") { Default = "1", DefaultWhy = "single-phase circuits" };
    private static readonly WordInput Cable = new("cable", "the data cable", "unscreened", "screened", "category-7", "unknown") { Default = "unscreened", DefaultWhy = "unscreened category 5e to 6A" };
    private static readonly WordInput Between = new("between", "what lies between", "nothing", "basket", "perforated", "solid") { Default = "nothing", DefaultWhy = "nothing, or plastic" };
    private static readonly QuantityInput Distance = new("distance", "how far apart they are", Metres.Units, new(0, 10_000, "mm")) { IsOptional = true };

    private static readonly SumOutput Least = new("least-distance", "mm", "least distance from mains");
    private static readonly SumOutput Left = new("left", "mm", "left beyond it");
    private static readonly SumOutput Counted = new("counted", "", "circuits as they count");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "mains-separation",
        Discipline = CablingSums.Discipline,
        Answers = "how far must data cables stay from mains?",
        Inputs = [Circuits, Cable, Between, Rating, Phases, Distance],
        Outputs = [Least, Left, Counted],
        Formula = "A = S · P; S by cable and what lies between, P by the number of circuits of up to 20 A",
        Source = "EN 50174-2, seen in an electrical handbook; the row for unknown cable, three-phase circuits and those above 20 A from memory",
        Example = "circuits 14 cable screened",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var counted = MainsSeparation.CountOf((int)given[Circuits], given[Rating], given.Word(Phases) == "3");
        var cable = given.Word(Cable) switch { "unscreened" => SeparationClass.B, "screened" => SeparationClass.C, "category-7" => SeparationClass.D, _ => SeparationClass.A };
        var between = (MainsBarrier)Between.Choices.ToList().IndexOf(given.Word(Between));
        var least = MainsSeparation.Millimetres(cable, between, counted);
        var figures = new List<SumFigure> { Least.Is(least), Counted.Is(counted) };
        var left = 1000 * given.Maybe(Distance) - least;
        if (left is not null)
            figures.Insert(1, Left.Is(left));
        return new SumAnswer(
            left is null ? $"They must stay {new Told(least, "mm")} apart."
            : left >= 0 ? $"They must stay {new Told(least, "mm")} apart: {new Told(left.Value, "mm")} are left."
            : (FormattableString)$"They must stay {new Told(least, "mm")} apart: {new Told(-left.Value, "mm")} are missing.",
            figures,
            [
                new("circuits", $"{Words.Of(given[Circuits])} as circuits of up to 20 A", counted, ""),
                new("S", $"{given.Word(Cable)}, {given.Word(Between)} between", MainsSeparation.BaseMillimetres(cable, between), "mm"),
                new("P", $"for {counted} circuits", MainsSeparation.CircuitFactor(counted), ""),
                new("A", "S · P", least, "mm"),
            ])
        {
            Holds = !(left < 0),
            Notes = [$"National rules for safety come first. Fluorescent fittings: {new Told(1000 * MainsSeparation.FluorescentMetres, "mm")} at least."],
            Cautions = given[Circuits] > 0 ? [CautionTable.MainsBeside] : [],
        };
    }
}

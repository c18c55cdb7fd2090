using Headroom.Domain.Quantities;
using Headroom.Engineering.Racking;

namespace Headroom.Engineering.Sums.Racking;

/// <summary>How long a cord within a rack must be.</summary>
internal static class CordInRack
{
    private static readonly QuantityInput Apart = new("apart", "from the middle of one unit to the middle of the other", RackUnits.Units, new(0.5, 60, "U"));

    private static readonly SumOutput Length = new("length", "m", "least length of the cord");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "rack-cord",
        Discipline = RackingSums.Discipline,
        Answers = "how long must a cord within a rack be?",
        Inputs = [Apart],
        Outputs = [Length],
        Formula = "half a panel's width to the side at both ends + the height between + 0.1 m of slack at each end",
        Source = "IEC 60297, from memory; the slack is common practice, no source",
        Example = "apart 6 U",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var length = RackCords.NeededMetres(given[Apart]);
        return new SumAnswer(
            $"It needs {new Told(length, "m")} along the rails.",
            [Length.Is(length)],
            [new("length", $"{Words.Of(RackHeight.PanelWidthMillimetres)} mm + {Words.Of(given[Apart])} · {Words.Of(RackHeight.UnitMillimetres)} mm + 2 · {Words.Of(1000 * RackCords.SlackMetres)} mm", length, "m")]);
    }
}

using Headroom.Engineering.Power;
using static Headroom.Engineering.Sums.Power.RunInputs;

namespace Headroom.Engineering.Sums.Power;

/// <summary>What a meter should show of a run, and what power meets on it.</summary>
internal static class LoopResistance
{
    private static readonly SumOutput Pair = new("pair-loop", "Ω", "one pair joined at the far end: what a meter shows");
    private static readonly SumOutput One = new("conductor", "Ω", "one conductor from end to end");
    private static readonly SumOutput Two = new("power-loop-2", "Ω", "what power meets on two pairs");
    private static readonly SumOutput Four = new("power-loop-4", "Ω", "what power meets on four pairs");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "loop-resistance",
        Discipline = PowerSums.Discipline,
        Answers = "what resistance should a run have?",
        Inputs = [Length, Cable, Temperature, Conductivity],
        Outputs = [Pair, One, Two, Four],
        Formula = "r = (1 / 58 A) (1 + 0.00393 (t − 20)); one pair 2 r L; power on two pairs r L, on four r L / 2",
        Source = $"equal conductors side by side (circuit theory); {RunInputs.Source}",
        Example = "length 82 m cable 23 AWG temperature 45 C",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (perMetre, metres) = (OhmsPerMetre(given), given[Length]);
        var pair = PairLoop.PairLoopOhms(perMetre, metres);
        var two = PairLoop.PowerLoopOhms(perMetre, metres, 2);
        var four = PairLoop.PowerLoopOhms(perMetre, metres, 4);
        return new SumAnswer(
            $"A pair joined at the far end should show {new Told(pair, "Ω")}; power on two pairs meets {new Told(two, "Ω")}, on four {new Told(four, "Ω")}.",
            [Pair.Is(pair), One.Is(perMetre * metres), Two.Is(two), Four.Is(four)],
            [
                new("one conductor", PerMetre(given), 1000 * perMetre, "mΩ/m"),
                new("one pair, out and back", $"2 · {Words.Of(1000 * perMetre)} mΩ/m · {Words.Of(metres)} m", pair, "Ω"),
                new("power on two pairs", "two conductors out, two back", two, "Ω"),
                new("power on four pairs", "four conductors out, four back", four, "Ω"),
            ])
        {
            Cautions = Cautions(given),
            Notes = [$"Twisting makes a conductor 1 to 3 % longer than its cable, so that a meter shows that much more (common practice, no source)."],
        };
    }
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How long the cords of a channel may be.</summary>
internal static class CordLength
{
    private static readonly QuantityInput Link = new("link", "length of the link, panel to outlet", Metres.Units, new(0, 200, "m"));
    private static readonly QuantityInput Cord = new("cord", "conductor of the cords", SquareMillimetres.Units, new(0.03, 2.5, "mm2")) { Default = "26 AWG", DefaultWhy = "thin cords, to be on the safe side (common practice, no source)" };

    private static readonly SumOutput Longest = new("longest-cords", "m", "all cords together");
    private static readonly SumOutput Channel = new("channel", "m", "link and cords together");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "cord-length",
        Discipline = CablingSums.Discipline,
        Answers = "how long may the cords be beside a link?",
        Inputs = [Link, Cord],
        Outputs = [Longest, Channel],
        Formula = "C = (102 m − H) / (1 + D); D = 0.2 for 22 to 24 AWG, 0.5 for 26, 0.95 for 28",
        Source = "ANSI/TIA-568 work-area formula and 568.2-D annex, from memory; the results for 28 AWG agree with two published examples",
        Example = "link 82 m cord 28 AWG",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        if (CordRule.Derating(given[Cord]) is not { } derating)
        {
            return new SumAnswer(
                $"The cabling standards allow no cord as thin as {new Told(given[Cord], "mm²")}; 28 AWG is the thinnest.",
                [Longest.Is(null), Channel.Is(null)],
                []) { Holds = false };
        }

        if (CordRule.LongestMetres(given[Link], derating) is not { } byLoss)
        {
            return new SumAnswer(
                $"The link alone takes all: nothing is left for cords beside {new Told(given[Link], "m")}.",
                [Longest.Is(null), Channel.Is(null)],
                []) { Holds = false };
        }

        var isThin = !ChannelLimits.IsThickEnough(given[Cord], ChannelLimits.ThinnestPlainCordAwg);
        var longest = isThin ? Math.Min(byLoss, CordRule.ThinMetres) : byLoss;
        return new SumAnswer(
            $"All cords together may be {new Told(longest, "m")} long, for a channel of {new Told(given[Link] + longest, "m")}.",
            [Longest.Is(longest), Channel.Is(given[Link] + longest)],
            [
                new("D", "what the cords lose more than the cable", derating, ""),
                new("C", $"({Words.Of(CordRule.WholeMetres)} − {Words.Of(given[Link])}) / (1 + {Words.Of(derating)})", byLoss, "m"),
                .. longest < byLoss ? (Headroom.Domain.Ledgers.WorkingStep[])[new("28 AWG", "no more than this in all", longest, "m")] : [],
            ])
        {
            Holds = longest > 0,
            Notes = [$"A warm link counts as longer: 'headroom reckon link-length' says how much. At the outlet a cord may be {new Told(CordRule.OutletEndMetres, "m")} at most."],
        };
    }
}

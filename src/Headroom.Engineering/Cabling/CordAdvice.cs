using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Cabling;

/// <summary>What would bring the cords of a run inside their limit.</summary>
internal static class CordAdvice
{
    // The loss of a stout cord of 24 AWG over that of horizontal cable.
    private const double StoutFactor = 1.2;

    /// <summary>The advice for cords that are too long or nearly so.</summary>
    public static List<string> Of(CopperRun run, CordSums cords, Reserve reserve)
    {
        var advice = new List<string>();
        if (cords.LongestMetres is not { } longest || cords.Metres is not { } metres)
            return advice;
        if (cords.ThinMetres > 0)
        {
            var stout = Math.Max(0, CordRule.WholeMetres - run.LinkAtTwentyMetres) / StoutFactor;
            if (stout - reserve.Of(stout) >= metres)
                advice.Add($"take cords of 24 AWG: they may be {Words.Of(stout)} m together");
        }

        if (longest - reserve.Of(longest) > 0)
            advice.Add($"take shorter cords: up to {Words.Of(longest - reserve.Of(longest))} m together");
        return advice;
    }
}

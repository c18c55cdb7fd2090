namespace Headroom.Engineering.Cabling;

/// <summary>The likely cause of what was read of the pairs, in words, and what to do.</summary>
/// <param name="Words">What is likely.</param>
/// <param name="Advice">What to do about it.</param>
internal sealed record PairCause(string Words, string Advice)
{
    // Twists of different length make the pairs of one cable differ by 1 to 3 %; more than 5 % is something else: common practice, no source.
    private const double TwistShare = 0.05;

    // A tester's own leads and contacts: less than this is not told apart. Common practice, no source.
    private const double LeastOhms = 0.3;

    /// <summary>Judges the readings of a run.</summary>
    public static PairCause Of(CopperRun run, PairReadings readings, PairDifference difference)
    {
        if (difference.Other is null)
            return difference.Ohms <= difference.MostOhms
                ? new("the two conductors are alike", $"read pair {difference.Pair} again after any work on it")
                : new($"one of the two conductors of pair {difference.Pair} has a poor contact or a nick", $"terminate pair {difference.Pair} anew at both ends and read it again");
        var pairs = readings.Pairs.ToList();
        var ohms = pairs.ConvertAll(pair => readings.Loop(pair)!.Value);
        var (highest, usual) = (ohms.Max(), Usual(ohms));
        var above = highest - usual;
        if (above > Math.Max(LeastOhms, TwistShare * usual))
        {
            var pair = pairs[ohms.IndexOf(highest)];
            return new($"pair {pair} is {Headroom.Engineering.Words.Of(above)} Ω above its neighbours: a poor contact at one end", $"terminate pair {pair} anew and read it again");
        }

        if (usual - ohms.Min() > Math.Max(LeastOhms, TwistShare * usual))
            return new($"pair {pairs[ohms.IndexOf(ohms.Min())]} is well below its neighbours: a short along the way, or another cable was read", "read it again from both ends");
        return run.LinkLoopOhms is { } expected && usual > expected * (1 + TwistShare) + LeastOhms
            ? new("all pairs are above what length and gauge give: longer, thinner, hotter or copper-clad", "scrape a conductor, and measure the length")
            : new("the pairs are alike", "nothing is to be mended");
    }

    // The middle of the others: of two the lower, of three or four the second lowest.
    private static double Usual(List<double> ohms)
    {
        var sorted = ohms.Order().ToList();
        return sorted[(sorted.Count - 1) / 2];
    }
}

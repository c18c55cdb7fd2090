using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Entries from what was read of the pairs: how unlike the conductors of a pair are, and the pairs one another.</summary>
internal static class UnbalanceEntries
{
    /// <summary>Adds the entries of a run; between pairs needs two that were read.</summary>
    public static void Add(List<LedgerEntry> entries, CopperRun run, PairReadings readings, Policy policy)
    {
        var reserve = policy.ReserveOf("unbalance");
        if (Within(run, readings) is { } within)
            entries.Add(Entry(run, readings, within, reserve, ("unbalance", "unbalance within a pair")));
        if (Between(readings) is { } between)
            entries.Add(Entry(run, readings, between, reserve, ("pair-unbalance", "unbalance between pairs")));
    }

    /// <summary>The pair whose conductors differ most of what they may; null when none was read.</summary>
    public static PairDifference? Within(CopperRun run, PairReadings readings)
    {
        PairDifference? worst = null;
        foreach (var pair in readings.UnbalancedPairs)
        {
            var loop = readings.Loop(pair)?.Value ?? run.LinkLoopOhms;
            var difference = new PairDifference(pair, null, Math.Abs(readings.Difference(pair)!.Value), Unbalance.WithinLimitOhms(loop ?? 0), loop);
            if (!(difference.Used <= worst?.Used))
                worst = difference;
        }

        return worst;
    }

    /// <summary>The two pairs that differ most of what they may, each with its conductors side by side; null when fewer than two were read.</summary>
    public static PairDifference? Between(PairReadings readings)
    {
        PairDifference? worst = null;
        var pairs = readings.Pairs.ToList();
        for (var i = 0; i < pairs.Count; i++)
        {
            for (var j = i + 1; j < pairs.Count; j++)
            {
                var (one, other) = (SideBySide(readings, pairs[i]), SideBySide(readings, pairs[j]));
                var (high, low) = one >= other ? (pairs[i], pairs[j]) : (pairs[j], pairs[i]);
                var difference = new PairDifference(high, low, Math.Abs(one - other), Unbalance.BetweenLimitOhms(one, other), null);
                if (!(difference.Used <= worst?.Used))
                    worst = difference;
            }
        }

        return worst;
    }

    private static double SideBySide(PairReadings readings, string pair) => Unbalance.SideBySideOhms(Math.Max(0, readings.Loop(pair)!.Value));

    private static LedgerEntry Entry(CopperRun run, PairReadings readings, PairDifference difference, Reserve reserve, (string Quantity, string What) of)
    {
        var cause = PairCause.Of(run, readings, difference);
        var entry = new EntryDraft(CablingLedger.Discipline, run.Id, of.Quantity, of.What, "Ω", "unbalance").With(difference.Ohms, difference.MostOhms, reserve, new UnbalanceStory(run, readings, difference, cause, reserve));
        return entry with { Advice = entry.Studied is Verdict.Short or Verdict.Tight ? [cause.Advice] : [] };
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Acceptance;

/// <summary>What the resistances in a tester's file say of the pairs: a study of the job with them among its readings.</summary>
internal static class PairStudy
{
    /// <summary>The findings by drop; only of those whose pairs differ more than they may, or nearly.</summary>
    public static Dictionary<string, IReadOnlyList<string>> Of(Job job, Catalogue catalogue, IReadOnlyDictionary<string, TesterResult> last)
    {
        var read = last.Values.SelectMany(Readings).ToList();
        var told = new Dictionary<string, IReadOnlyList<string>>();
        if (read.Count == 0 || job.Designs.Count == 0)
            return told;
        var withThem = job with { Readings = [.. job.Readings.Where(reading => reading.Pair is null), .. read] };
        var ledger = Study.Run(withThem, catalogue, new StudyRequest(null, DateOnly.MinValue, [], [CablingLedger.Discipline]));
        foreach (var entry in ledger.Entries.Where(entry => entry.Quantity == "pair-unbalance" && last.ContainsKey(entry.Subject) && entry.Studied is Verdict.Short or Verdict.Tight))
            told[entry.Subject] = [entry.Story.Say(entry), .. entry.Advice];
        return told;
    }

    private static IEnumerable<Reading> Readings(TesterResult record) => record.LoopOhms.Select(loop => new Reading(
        "ohms", record.Label, loop.Value, "Ω", null, Words.Of(loop.Value, "Ω"), "cable tester", null, UpperBound: false, null, null, null, null, null, null, loop.Key, record.At));
}

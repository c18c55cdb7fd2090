using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies;

/// <summary>Leaves out what another remedy does as well for no more, and puts the rest in order.</summary>
internal static class Ranking
{
    /// <summary>The remedies that remain: what costs nothing first, then by gain for the money, then savings at the price of something else, then those of no known price.</summary>
    public static List<Remedy> Of(List<Remedy> remedies, IReadOnlyList<LedgerEntry> asked)
    {
        var left = remedies.ConvertAll(remedy => Left(remedy, asked));
        var gone = new bool[remedies.Count];
        for (var one = 0; one < remedies.Count; one++)
        {
            // Only what still stands may dominate: of several that differ by less than counts, one must stay.
            for (var other = 0; other < remedies.Count && !gone[one]; other++)
                gone[one] = one != other && !gone[other] && Dominates((remedies[other], left[other], other), (remedies[one], left[one], one));
        }

        var kept = remedies.Where((_, index) => !gone[index]);
        return [.. kept.OrderBy(Group).ThenByDescending(remedy => remedy.GainPerHundred ?? remedy.Gain).ThenByDescending(remedy => remedy.NetGain)];
    }

    private static int Group(Remedy remedy) => remedy switch
    {
        { BuysNothing: true, Cost.Amount: <= 0 } => 0,
        // Saved by doing without what the other model can: whether that is a saving is for the client to say.
        { Cost.Amount: < 0, Certainty: Certainty.Rough } => 3,
        { Cost.Amount: <= 0 } => 1,
        { Cost.Amount: > 0 } => 2,
        _ => 4,
    };

    // What is still amiss with each entry that was asked for.
    private static double[] Left(Remedy remedy, IReadOnlyList<LedgerEntry> asked)
    {
        var after = new Dictionary<string, double>();
        foreach (var entry in remedy.After.Entries)
            after[entry.Id] = Shortage.Of(entry);
        return [.. asked.Select(entry => after.GetValueOrDefault(entry.Id))];
    }

    private static bool Dominates((Remedy Remedy, double[] Left, int Index) first, (Remedy Remedy, double[] Left, int Index) second)
    {
        var (a, b) = (first.Remedy, second.Remedy);
        if (!NoDearer(a, b) || a.NetGain < b.NetGain - RemedySearch.Least || a.Certainty > b.Certainty || a.Cautions.Any(caution => !b.Cautions.Contains(caution)))
            return false;
        for (var i = 0; i < first.Left.Length; i++)
        {
            if (first.Left[i] > second.Left[i] + RemedySearch.Least)
                return false;
        }

        // Of two that are alike in all of that, the first thought of stays.
        return first.Index < second.Index || !NoDearer(b, a) || a.NetGain > b.NetGain + RemedySearch.Least
            || a.Certainty < b.Certainty || a.Cautions.Count < b.Cautions.Count
            || Enumerable.Range(0, first.Left.Length).Any(i => first.Left[i] < second.Left[i] - RemedySearch.Least);
    }

    private static bool NoDearer(Remedy a, Remedy b) => (a.Cost.Amount, b.Cost.Amount) switch
    {
        ({ } one, { } other) => one <= other,
        ({ } one, null) => one <= 0,
        _ => false,
    };
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Entries of a pathway: how full it is, and how far its cables are from the mains. It asks one question at a time.</summary>
internal static class PathwayEntries
{
    /// <summary>Adds the entries of one pathway.</summary>
    public static void Add(List<LedgerEntry> entries, PathwayUse use, Policy policy)
    {
        var fill = use.CanBeFull ? Fill(use, policy) : null;
        if (fill is not null)
            entries.Add(fill);
        if (SeparationEntry.Of(use, policy) is { } separation && (separation.Question is null || fill?.Question is null))
            entries.Add(separation);
    }

    private static LedgerEntry Fill(PathwayUse use, Policy policy)
    {
        var reserve = policy.ReserveOf("fill");
        var story = new FillStory(use, reserve);
        var (known, all) = (use.Cables.Count - use.NotMeasured.Count + (use.AlreadyKnown ? 1 : 0), use.Cables.Count + 1);
        var entry = new EntryDraft(CablingLedger.Discipline, use.Pathway.Id, "fill", $"fill of the {use.Pathway.Kind}", "%", "fill")
            .With(100 * use.Share, 100 * use.MostShare, reserve, story, known == all ? null : new KnownParts(known, all));
        return entry with
        {
            Question = entry.Studied == Verdict.Unknown ? Question(use) : null,
            Cautions = Cautions(use),
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? new LateList<string>(() => story.Advice(entry)) : [],
        };
    }

    private static string Question(PathwayUse use)
    {
        var id = use.Pathway.Id;
        if (use.InsideSquareMillimetres is null)
            return use.IsConduit ? $"how wide is {id} inside? measure its inner diameter" : $"how large is {id} inside? measure its width and height";
        return !use.AlreadyKnown
            ? $"what lies in {id} already? count the cables and measure one, or write 'already: none'"
            : $"how thick are the cables of {Words.List([.. use.NotMeasured.Select(cable => cable.Drop)])}? measure them over the jacket";
    }

    private static List<Caution> Cautions(PathwayUse use)
    {
        var cautions = new List<Caution>(2);
        var pathway = use.Pathway;
        if (pathway.Bends > PullRules.BetweenPointsBends || pathway.LongestPull?.Value.Value > PullRules.BetweenPointsMetres + 1e-9)
            cautions.Add(CautionTable.HardPull);
        if (pathway.BendRadius is { } radius && radius.Value.Value < LeastRadiusMetres(use) - 1e-9)
            cautions.Add(CautionTable.TightBend);
        return cautions;
    }

    /// <summary>The least radius of a bend for what lies there [m]: the conduit's own rule, and each cable's.</summary>
    internal static double LeastRadiusMetres(PathwayUse use)
    {
        var least = use.IsConduit && use.Pathway.Inside is { } inside ? PullRules.ConduitRadiusMetres(inside.Value.Value) : 0;
        foreach (var cable in use.Cables)
        {
            if (cable.Piece.Copper?.BendRadius is { } own)
                least = Math.Max(least, own.Value.Value);
            else if (cable is { Piece.Copper: not null, Millimetres: { } d })
                least = Math.Max(least, PullRules.CableRadiusMetres(d / 1000, cord: false));
        }

        return least;
    }
}

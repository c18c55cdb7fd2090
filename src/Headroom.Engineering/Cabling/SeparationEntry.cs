using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>The entry for the distance between a pathway's copper cables and the mains beside it.</summary>
internal static class SeparationEntry
{
    /// <summary>The entry; null where no mains is beside, or nothing of copper in it.</summary>
    public static LedgerEntry? Of(PathwayUse use, Policy policy)
    {
        if (WorstClass(use) is not { } cls || use.Pathway.MainsBeside is { Count: 0 })
            return null;
        var pathway = use.Pathway;
        var circuits = Circuits(pathway);
        var barrier = Barrier(pathway.Barrier);
        var reserve = policy.ReserveOf("separation");
        // Until somebody says what lies between, the worst is nothing: a gap that is enough for that is enough.
        var needed = circuits is { } count ? MainsSeparation.Millimetres(cls, barrier ?? MainsBarrier.NoneOrPlastic, count) : (double?)null;
        var there = 1000 * pathway.Apart?.Value.Value ?? (needed == 0 ? 0 : null);
        var certain = barrier is not null || there >= needed;
        var figures = new SeparationFigures(use, cls, barrier, circuits, needed);
        var entry = new EntryDraft(CablingLedger.Discipline, pathway.Id, "separation", "distance from mains", "mm", "separation") { Sense = Sense.AtLeast }
            .With(needed, there, needed == 0 ? Reserve.Nothing : reserve, new SeparationStory(figures, reserve));
        entry = certain ? entry : entry with { Studied = Verdict.Unknown };
        return entry with
        {
            Question = entry.Studied == Verdict.Unknown ? Question(pathway, circuits, barrier) : null,
            Cautions = circuits is null ? [] : [CautionTable.MainsBeside],
            Assumed = Assumed(use, cls),
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? Advice(figures) : [],
        };
    }

    /// <summary>What lies between, as the standard names it; null when not surveyed.</summary>
    public static MainsBarrier? Barrier(string? word) => word switch
    {
        null => null,
        "aluminium" or "steel" => MainsBarrier.SolidMetal,
        "perforated metal" => MainsBarrier.PerforatedMetal,
        "basket" => MainsBarrier.OpenMetal,
        _ => MainsBarrier.NoneOrPlastic,
    };

    private static int? Circuits(Pathway pathway)
    {
        if (pathway.MainsBeside is not { } beside)
            return null;
        var count = 0;
        foreach (var kind in beside)
            count += MainsSeparation.CountOf(kind.Count, kind.Rating?.Value.Value ?? MainsSeparation.CircuitAmperes, kind.ThreePhase);
        return count;
    }

    private static SeparationClass? WorstClass(PathwayUse use)
    {
        SeparationClass? worst = null;
        foreach (var cable in use.Cables)
        {
            if (cable.Class is { } cls && !(worst <= cls))
                worst = cls;
        }

        return worst;
    }

    private static string Question(Pathway pathway, int? circuits, MainsBarrier? barrier) =>
        circuits is null ? $"which mains circuits lie beside {pathway.Id}, how far off, and what is between? 'mains beside: none' if there are none"
        : pathway.Apart is null ? $"how far from the mains is {pathway.Id}? measure the gap{(barrier is null ? ", and say what is between" : "")}"
        : $"what lies between {pathway.Id} and the mains beside it?";

    private static List<string> Assumed(PathwayUse use, SeparationClass cls)
    {
        var assumed = new List<string>(0);
        if (cls == SeparationClass.A && use.Cables.Any(cable => cable.Class == SeparationClass.A && cable.Piece.Copper?.Category is null))
            assumed.Add($"a cable in {use.Pathway.Id} has no category: the greatest distance was taken");
        if (use.Pathway.MainsBeside?.Any(kind => kind.Rating is null) == true)
            assumed.Add($"circuits beside {use.Pathway.Id} without rating: up to 20 A each");
        return assumed;
    }

    private static List<string> Advice(SeparationFigures of)
    {
        var advice = new List<string> { $"move the data cables to {Words.Of(of.NeededMillimetres ?? 0)} mm from the mains, not the mains from them" };
        if (of.Barrier is not MainsBarrier.SolidMetal)
            advice.Add("or put a wall of solid metal between, bonded: then no distance is needed");
        return advice;
    }
}

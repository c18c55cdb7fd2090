using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>More distance from the mains, or solid metal between.</summary>
internal sealed class MetalBarrier : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (entry.Quantity != "separation")
            yield break;
        foreach (var way in at.Survey.Pathways.Where(way => way.Id == entry.Subject))
        {
            if (entry.Demand + entry.Reserve is { } needed)
            {
                var apart = Words.Of(Math.Ceiling(needed), "mm");
                yield return Idea(at, $"{way.Id}: its cables led {apart} from the mains", new(way.Id, Place.None) { Apart = Delta.Value<Metres>(apart) }, null);
            }

            if (way.Barrier is not ("steel" or "aluminium"))
                yield return Idea(at, $"{way.Id}: a wall of steel between it and the mains, bonded", new(way.Id, Place.None) { Barrier = "steel" }, "what the steel costs");
        }
    }

    private static RemedyIdea Idea(RemedyCase at, string text, Domain.Jobs.PathwayChange change, string? unpriced) =>
        new("barrier", text, Delta.Building(at, new() { Pathways = [change] })) { Minutes = Entries.Tools, Unpriced = unpriced, Cautions = [CautionTable.MainsBeside] };
}

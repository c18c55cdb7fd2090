using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>One or two sizes more of conduit, or a larger tray.</summary>
internal sealed class WiderPathway : IRemedyKind
{
    private static readonly double[] Larger = [1.5, 2];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (entry.Quantity != "fill")
            yield break;
        foreach (var way in at.Survey.Pathways.Where(way => way.Id == entry.Subject))
        {
            if (way.Inside is { } inside)
            {
                foreach (var size in ConduitSize.All.Where(size => size.InsideMillimetres / 1000 > inside.Value.Value + 1e-4).Take(2))
                {
                    var written = Words.Of(size.InsideMillimetres, "mm");
                    yield return Idea(at, $"{way.Id}: a conduit of trade size {size.Trade}, {written} inside", new(way.Id, Place.None) { Inside = Delta.Value<Metres>(written) });
                }
            }

            if (way.Area is { } area)
            {
                foreach (var times in Larger)
                {
                    var written = Words.Of(times * area.Value.Value * 1e4, "cm2");
                    yield return Idea(at, $"{way.Id}: {written} in place of {area.Written}", new(way.Id, Place.None) { Area = Delta.Value<SquareMetres>(written) });
                }
            }
        }
    }

    private static RemedyIdea Idea(RemedyCase at, string text, PathwayChange change) => new("wider way", text, Delta.Building(at, new() { Pathways = [change] }))
    {
        Minutes = Entries.HalfDay,
        Unpriced = "what the wider way costs",
    };
}

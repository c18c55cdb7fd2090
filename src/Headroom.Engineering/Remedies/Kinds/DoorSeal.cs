using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A seal round a door through whose gaps sound comes.</summary>
internal sealed class DoorSeal : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfSound(entry))
            yield break;
        // A seal that is well fitted leaves a tenth open or less: common practice, no source.
        foreach (var wall in at.Survey.Partitions.Where(wall => wall.Gap is { Value.Value: > 0 }))
        {
            var left = Words.Of(wall.Gap!.Value.Value * 1e4 / 10, "cm2");
            yield return new("door seal", $"{wall.Id}: the door sealed, {left} of gap left", Delta.Building(at, new() { Partitions = [new(wall.Id, Place.None) { Gap = Delta.Value<SquareMetres>(left) }] }))
            {
                Minutes = (30, 90),
                Unpriced = "what a seal costs",
                Rough = "how much of the gap a seal closes is for the door to show",
            };
        }
    }
}

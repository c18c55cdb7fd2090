using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A better door in a wall through which sound comes.</summary>
internal sealed class BetterDoor : IRemedyKind
{
    // What doors are sold as keeping, set in with a seal [dB]: common practice, no source.
    private static readonly int[] Doors = [32, 37];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfSound(entry))
            yield break;
        foreach (var wall in at.Survey.Partitions.Where(wall => wall.Door is not null))
        {
            foreach (var door in Doors.Where(door => !(wall.DoorReduction?.Value.Value >= door)))
            {
                yield return new("door", $"{wall.Id}: a door that keeps {door} dB", Delta.Building(at, new()
                {
                    Partitions = [new(wall.Id, Place.None) { DoorReduction = Delta.Value<Decibels>($"{door} dB"), Gap = wall.Gap is null ? null : Delta.Value<SquareMetres>("0 cm2") }],
                }))
                {
                    Minutes = Entries.HalfDay,
                    Unpriced = "what a door costs",
                };
            }
        }
    }
}

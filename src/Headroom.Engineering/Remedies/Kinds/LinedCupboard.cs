using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Heavier walls round a cupboard out of which sound comes.</summary>
internal sealed class LinedCupboard : IRemedyKind
{
    // Boards screwed on in two layers [dB]: common practice, no source.
    private const int Lined = 35;

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfSound(entry))
            yield break;
        foreach (var space in at.Survey.Spaces.Where(space => space.Enclosure is { } walls && !(walls.Reduction?.Value.Value >= Lined) && at.Bound.Switches.Any(unit => unit.Space == space.Id)))
        {
            yield return new("lining", $"{space.Id}: a second layer of board, walls that keep {Lined} dB", Delta.Building(at, new() { Spaces = [new(space.Id, Place.None) { Reduction = Delta.Value<Decibels>($"{Lined} dB") }] }))
            {
                Minutes = Entries.HalfDay,
                Unpriced = "what the boards cost",
                Cautions = [CautionTable.WarmCabinet],
                Rough = "what walls keep hangs on how they are put together",
            };
        }
    }
}

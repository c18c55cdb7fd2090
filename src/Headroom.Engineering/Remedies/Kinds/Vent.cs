using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Vents or grilles, one low and one high, in a cupboard whose air is too warm.</summary>
internal sealed class Vent : IRemedyKind
{
    // Free areas that can be bought and cut [cm²]: common practice, no source.
    private static readonly int[] Areas = [100, 200, 400, 800];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfHeat(entry))
            yield break;
        foreach (var space in at.Survey.Spaces.Where(space => space.Enclosure is not null && Holds(space, entry.Subject, at)))
        {
            // The middles of a low and a high vent can stand three quarters of the height apart.
            var apart = space.Size is { } size ? Words.Of(Math.Round(0.75 * size.Value.Height, 1), "m") : null;
            foreach (var area in Areas.Where(area => !(space.Enclosure!.Vents?.Value.Value >= area / 1e4)))
            {
                var change = new SpaceChange(space.Id, Place.None) { Vents = Delta.Value<SquareMetres>($"{area} cm2"), VentsApart = apart is null ? null : Delta.Value<Metres>(apart) };
                yield return new("vents", $"{space.Id}: vents of {area} cm² free area, one low and one high{(apart is null ? "" : $", {apart} apart")}", Delta.Building(at, new() { Spaces = [change] }))
                {
                    Minutes = Entries.Tools,
                    Unpriced = "what the grilles cost",
                    Cautions = [CautionTable.CutVents],
                };
            }
        }
    }

    private static bool Holds(Space space, string unit, RemedyCase at) => at.Bound.Switches.Any(one => one.Id == unit && one.Space == space.Id)
        || at.Bound.Injectors.Any(one => one.Id == unit && one.Space == space.Id)
        || at.Design.Standby.Any(one => one.Id == unit && (one.Standing.In == space.Id || at.Survey.Racks.Any(rack => rack.Id == one.Standing.In && rack.In == space.Id)));
}

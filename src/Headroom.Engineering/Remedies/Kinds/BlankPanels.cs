using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Panels in the empty units of a rack, so that warm air does not come back.</summary>
internal sealed class BlankPanels : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfHeat(entry))
            yield break;
        foreach (var rack in at.Survey.Racks.Where(rack => rack.Blanked != true && at.Bound.Switches.Any(unit => unit.Id == entry.Subject && unit.Placed.Standing.In == rack.Id)))
        {
            yield return new("panels", $"{rack.Id}: panels over its empty units", Delta.Building(at, new() { Racks = [new(rack.Id, Place.None) { Blanked = true }] }))
            {
                Minutes = (10, 30),
                Unpriced = "what blank panels cost",
            };
        }
    }
}

using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>One mated pair of connectors less along a fibre.</summary>
internal sealed class FewerConnectors : IRemedyKind
{
    // What is left when a fibre is plugged at both ends.
    private const int Fewest = 2;

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (entry.Quantity != "loss")
            yield break;
        foreach (var drop in at.DropsOf(entry).Where(drop => drop.MatedPairs > Fewest))
        {
            foreach (var pairs in new[] { drop.MatedPairs!.Value - 1, Fewest }.Distinct())
            {
                yield return new("connectors", $"{drop.Id}: {pairs} mated pairs in place of {drop.MatedPairs}", Delta.Building(at, new() { Drops = [new(drop.Id, Place.None) { MatedPairs = pairs }] }))
                {
                    Minutes = Entries.Tools,
                    Unpriced = "what splicing through costs",
                    Cautions = [CautionTable.Laser],
                };
            }
        }
    }
}

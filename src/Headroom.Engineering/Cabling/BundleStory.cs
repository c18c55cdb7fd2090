using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how many cables are tied together and how many are advised.</summary>
internal sealed class BundleStory(CableBundle bundle, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry) => new(
        "cables tied together ≤ 24, a recommendation and no limit of a standard",
        [new("cables tied together", bundle.Cables, "", bundle.CablesOrigin), ReserveInput(entry)],
        [new("drops of the survey among them", Words.List(bundle.Drops), bundle.Drops.Count, "")],
        "TIA TSB-184-A, seen in trade press: guidance");

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) =>
        [new("cables tied together", "cables", bundle.Cables, BundleHeat.MostCables, Math.Floor(Kept(BundleHeat.MostCables) + 1e-9))];

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{bundle.Cables} cables are tied together along {bundle.Name}; the guidance is up to {BundleHeat.MostCables}.";
}

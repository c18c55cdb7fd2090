using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how far cables are from the mains beside them, and how far they have to be.</summary>
internal sealed class SeparationStory(SeparationFigures of, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var pathway = of.Use.Pathway;
        var barrier = of.Barrier ?? MainsBarrier.NoneOrPlastic;
        return new Working(
            "distance = S · P: S by the cable's class and what lies between, P by the number of circuits",
            [
                new("circuits of up to 20 A", of.Circuits, "", pathway.MainsBeside is null ? "not known" : "as surveyed; three-phase counts as three, above 20 A as multiples of 20 A"),
                new("distance there is", entry.Limit, "mm", pathway.Apart is { } apart ? Origins.Of(apart) : of.NeededMillimetres == 0 ? "not measured; none is needed" : "not known"),
                ReserveInput(entry),
            ],
            [
                new("class of the cables", $"{of.Class.ToString().ToLowerInvariant()}, that of the cable least proof: {Words.List([.. of.Use.Cables.Where(cable => cable.Class == of.Class).Select(cable => cable.Piece.Cable ?? "not known").Distinct()])}", null, ""),
                new("between them", pathway.Barrier ?? "not known, counted as nothing", null, ""),
                new("S", "from the table", MainsSeparation.BaseMillimetres(of.Class, barrier), "mm"),
                new("P", "from the table", of.Circuits is { } count ? MainsSeparation.CircuitFactor(count) : null, ""),
                new("distance needed", "S · P", of.NeededMillimetres, "mm"),
            ],
            "EN 50174-2, seen in an electrical handbook; class a and the count of large circuits from memory. National safety rules come first");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (of.Circuits is not { } circuits || entry.Limit is not { } there || of.Barrier is not { } barrier || barrier == MainsBarrier.SolidMetal)
            return [];
        return [new("circuits of up to 20 A beside it", "circuits", circuits, MainsSeparation.MostCircuits(of.Class, barrier, there), MainsSeparation.MostCircuits(of.Class, barrier, Math.Max(0, Kept(there))))];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) => of.NeededMillimetres == 0
        ? $"between {of.Use.Pathway.Id} and the mains beside it is solid metal ({of.Use.Pathway.Barrier}): no distance is needed."
        : $"the cables in {of.Use.Pathway.Id} are {Words.Of(entry.Limit ?? 0)} mm from {Words.Count(of.Circuits ?? 0, "mains circuit")} and have to be {Words.Of(entry.Demand ?? 0)} mm away{(of.Barrier is null ? ", whatever lies between" : "")}.";
}

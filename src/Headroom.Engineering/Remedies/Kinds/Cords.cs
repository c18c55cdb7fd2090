using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Shorter or thicker cords at both ends of a drop.</summary>
internal sealed class Cords : IRemedyKind
{
    // The longest first: of several that do the same it is the one that still reaches.
    private static readonly double[] Metres = [5, 3, 2, 1];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfVolts(entry) && !(Entries.IsOfCable(entry) && entry.Quantity is "cords" or "length" or "conductors"))
            yield break;
        foreach (var drop in at.DropsOf(entry).Where(drop => drop.CordAtPanel is not null || drop.CordAtDevice is not null))
        {
            foreach (var cord in Thicker(drop, at.Catalogue))
                yield return Idea(at, drop, $"{drop.Id}: cords of {cord}, as long as they are", cable: cord, most: null);
            foreach (var most in Metres.Where(most => Longest(drop) > most))
                yield return Idea(at, drop, $"{drop.Id}: cords of {Words.Of(most)} m at most", cable: null, most);
        }
    }

    private static IEnumerable<string> Thicker(Drop drop, Catalogue catalogue)
    {
        var thinnest = new[] { drop.CordAtPanel, drop.CordAtDevice }.OfType<RunPiece>().Min(cord => AreaOf(catalogue, cord.Cable) ?? double.PositiveInfinity);
        return catalogue.Cables.Values.Where(cable => cable is { Stranded: true, CopperClad: false } && cable.Conductor?.Value.Value > thinnest).Select(cable => cable.Id);
    }

    private static double? AreaOf(Catalogue catalogue, string? cable) => cable is not null && catalogue.Cables.TryGetValue(cable, out var model) ? model.Conductor?.Value.Value : null;

    private static double Longest(Drop drop) => Math.Max(drop.CordAtPanel?.Length?.Value.Value ?? 0, drop.CordAtDevice?.Length?.Value.Value ?? 0);

    private static RemedyIdea Idea(RemedyCase at, Drop drop, string text, string? cable, double? most)
    {
        var change = new DropChange(drop.Id, Place.None) { CordAtPanel = Changed(drop.CordAtPanel, cable, most), CordAtDevice = Changed(drop.CordAtDevice, cable, most) };
        return new("cords", text, Delta.Building(at, new() { Drops = [change] }))
        {
            // A cord of the offer is one whatever its length or thickness: what a stouter one costs more is not in it.
            BuysNothing = cable is null,
            Unpriced = cable is null ? null : "what stouter cords cost more",
            Rough = most is null ? null : "whether so short a cord still reaches is for a look on site to say",
        };
    }

    private static RunPiece? Changed(RunPiece? cord, string? cable, double? most) => cord is null ? null : cord with
    {
        Cable = cable ?? cord.Cable,
        Length = most is { } metres && cord.Length?.Value.Value > metres ? Delta.Value<Metres>(Words.Of(metres, "m")) : cord.Length,
    };
}

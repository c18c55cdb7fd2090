using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Figures of the cables that have no limit: how much of each is to be laid, and how many boxes that opens.</summary>
internal static class CablingFigures
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(CablingResult result)
    {
        foreach (var total in CableTotals.Of(result.Bound))
        {
            var question = total.NotKnown.Count == 0 ? null : $"how long are {Words.List(total.NotKnown)}? they are not in the total";
            var least = total.NotKnown.Count == 0 ? "" : "at least, ";
            yield return new Figure($"cabling/{total.Cable}/metres", total.Cable, $"{least}to lay, with {Words.Of(100 * total.Waste)} % waste", total.Metres, "m", question, () => Metres(total));
            if (!total.IsFibre)
                yield return new Figure($"cabling/{total.Cable}/boxes", total.Cable, $"{least}boxes of 305 m (1000 ft) to open", total.Boxes, "", question, () => Boxes(total));
        }
    }

    private static Working Metres(CableTotal total) => new(
        "Σ L · (1 + waste), cords and what lies there already not counted",
        [
            new("runs of it whose length is known", total.Lengths.Count, "", "survey"),
            new("runs of it whose length is not known", total.NotKnown.Count, "", total.NotKnown.Count == 0 ? "none" : Words.List(total.NotKnown)),
            new("waste", 100 * total.Waste, "%", total.WasteOrigin),
        ],
        [new("lengths together", "the sum", total.Lengths.Sum(), "m"), new("with waste", $"· {Words.Of(1 + total.Waste)}", total.Metres, "m")],
        "lengths as surveyed; the waste is common practice, no source");

    private static Working Boxes(CableTotal total) => new(
        "the longest run first, each from the first box that still holds it; no run is joined from two remainders",
        [
            new("cable in a box", CableBoxes.BoxMetres, "m", "1000 ft, common practice, no source"),
            new("lengths with waste", total.Metres, "m", $"cabling/{total.Cable}/metres"),
        ],
        [new("boxes", "counted", total.Boxes, "")],
        "first fit, longest first");
}

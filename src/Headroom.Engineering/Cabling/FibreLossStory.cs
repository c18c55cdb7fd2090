using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how much light an uplink can lose and how much its modules bear.</summary>
internal sealed class FibreLossStory(FibreLink link, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput>();
        foreach (var piece in link.Run?.Pieces ?? [])
        {
            if (!piece.Cord)
                inputs.Add(new($"length of {piece.Name}", piece.Metres, "m", piece.MetresOrigin));
        }

        inputs.Add(new("most loss of a kilometre", link.DecibelsPerKilometre, "dB/km", link.LossOrigin));
        inputs.Add(new("mated pairs of connectors", link.MatedPairs, "", link.Run?.Drop.MatedPairs is null ? "assumed, one at each end" : "as surveyed"));
        inputs.Add(new("splices", link.Splices, "", link.Run?.Drop.Splices is null ? "assumed, none written" : "as surveyed"));
        inputs.Add(new("most the modules bear", link.MostDecibels, "dB", link.MostOrigin));
        inputs.Add(ReserveInput(entry));
        var steps = new List<WorkingStep>();
        if (link is { Metres: { } metres, DecibelsPerKilometre: { } loss })
        {
            steps.Add(new("in the fibre", $"{Words.Of(metres / 1000)} km · {Words.Of(loss)}", metres / 1000 * loss, "dB"));
            steps.Add(new("in connections", $"{link.MatedPairs} · {Words.Of(FibreLoss.PairDecibels)} + {link.Splices} · {Words.Of(FibreLoss.SpliceDecibels)}", link.MatedPairs * FibreLoss.PairDecibels + link.Splices * FibreLoss.SpliceDecibels, "dB"));
        }

        steps.Add(new("lost at worst", "the sum", link.Decibels, "dB"));
        return new Working(
            "loss = L · α + 0.75 dB a mated pair + 0.3 dB a splice; reach and loss must both be kept", inputs, steps,
            "TIA-568.3-D (losses), IEEE 802.3 tables of the port types (what may be lost), from memory");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry is not { Limit: { } limit, Demand: { } demand } || link is not { Metres: { } metres, DecibelsPerKilometre: > 0 and { } loss })
            return [];
        var (spare, kept) = (limit - demand, Kept(limit) - demand);
        return
        [
            new($"length of {link.Name}", "m", metres, Length(metres + 1000 * spare / loss), Length(metres + 1000 * kept / loss)),
            new("mated pairs of connectors", "pairs", link.MatedPairs, Whole(link.MatedPairs + spare / FibreLoss.PairDecibels), Whole(link.MatedPairs + kept / FibreLoss.PairDecibels)),
        ];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{link.Name} loses {(entry.Demand == link.Decibels ? "at most " : "")}{Words.Of(entry.Demand ?? 0)} dB, and {ReachStory.Modules(link)} bear {Words.Of(entry.Limit ?? 0)} dB.";

    private static double? Length(double metres) => metres >= 0 ? metres : null;

    private static double? Whole(double count) => count >= 0 ? Math.Floor(count + 1e-9) : null;
}

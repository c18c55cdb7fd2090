using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how unlike the conductors of a pair, or two pairs, were found to be, with the likely cause.</summary>
internal sealed class UnbalanceStory(CopperRun run, PairReadings readings, PairDifference difference, PairCause cause, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput>();
        foreach (var pair in readings.Pairs)
            inputs.Add(new($"pair {pair} out and back", readings.Loop(pair)!.Value, "Ω", Origins.Of(Domain.Quantities.Origin.Measured, readings.Loop(pair)!.At)));
        foreach (var pair in readings.UnbalancedPairs)
            inputs.Add(new($"difference within pair {pair}", readings.Difference(pair)!.Value, "Ω", Origins.Of(Domain.Quantities.Origin.Measured, readings.Difference(pair)!.At)));
        if (difference.Other is null && difference.LoopOhms is { } loop && readings.Loop(difference.Pair) is null)
            inputs.Add(new($"pair {difference.Pair} out and back", loop, "Ω", $"cabling/{run.Id}/loop"));
        inputs.Add(ReserveInput(entry));
        return difference.Other is null
            ? new("|R1 − R2| ≤ 3 % of the pair out and back, or 0.2 Ω, whichever is larger", inputs, Within(), "ANSI/TIA-568.2-D and IEEE 802.3 33.1.4.2, from memory")
            : new("|Ra − Rb| ≤ 7 % of Ra + Rb, or 0.05 Ω, whichever is larger; R of a pair is a quarter of its ohms out and back", inputs, Between(), "ISO/IEC 11801-1 and ANSI/TIA-568.2-D, from memory");
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) => difference.Other is { } other
        ? $"pair {difference.Pair} of {run.Id} has {Words.Of(difference.Ohms)} Ω more than pair {other}, conductors side by side, and may have {Words.Of(difference.MostOhms)} Ω: {cause.Words}."
        : $"the conductors of pair {difference.Pair} of {run.Id} differ by {Words.Of(difference.Ohms)} Ω and may by {Words.Of(difference.MostOhms)} Ω: {cause.Words}.";

    private List<WorkingStep> Within() =>
    [
        new("allowed", difference.LoopOhms is { } loop ? $"the larger of 0.2 and 3 % of {Words.Of(loop)}" : "0.2, the pair itself was not read", difference.MostOhms, "Ω"),
        new("likely cause", cause.Words, null, ""),
    ];

    private List<WorkingStep> Between()
    {
        var (high, low) = (Quarter(difference.Pair), Quarter(difference.Other!));
        return
        [
            new($"pair {difference.Pair} side by side", "a quarter of out and back", high, "Ω"),
            new($"pair {difference.Other} side by side", "a quarter of out and back", low, "Ω"),
            new("difference", $"{Words.Of(high)} − {Words.Of(low)}", difference.Ohms, "Ω"),
            new("allowed", $"the larger of 0.05 and 7 % of {Words.Of(high + low)}", difference.MostOhms, "Ω"),
            new("likely cause", cause.Words, null, ""),
        ];
    }

    private double Quarter(string pair) => Unbalance.SideBySideOhms(Math.Max(0, readings.Loop(pair)!.Value));
}

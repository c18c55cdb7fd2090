using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Failure;

/// <summary>Tells what one failure takes with it.</summary>
internal sealed class DarkStory(FailureEffect effect, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry) => Of(effect, [new("most that may be lost", entry.Limit, "ports", "policy, failures"), ReserveInput(entry)]);

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry is { Limit: { } limit, Demand: { } demand }
        ? [new("endpoints that hang on it", "ports", demand, Math.Floor(limit + 1e-9), Kept(limit) is >= 0 and var kept ? Math.Floor(kept + 1e-9) : null)]
        : [];

    /// <summary>The working of an effect.</summary>
    internal static Working Of(FailureEffect effect, IReadOnlyList<WorkingInput> inputs) => new(
        "endpoints without power + endpoints with power and no way to the line, or to the others where there is no line",
        inputs,
        [
            new("without power", effect.Dark.Count == 0 ? "none" : Words.List(effect.Dark, 12), effect.Dark.Count, ""),
            new("cut off", effect.CutOff.Count == 0 ? "none" : Words.List(effect.CutOff, 12), effect.CutOff.Count, ""),
        ],
        "followed along patches, uplinks and supplies; a standby supply that fails is taken to drop what it feeds; switches have one supply unless said otherwise");

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) => $"when {effect.Subject} fails, {Words.Count(effect.Lost, "endpoint")} {(effect.Lost == 1 ? "is" : "are")} lost{Split()}; {Words.Of(entry.Limit ?? 0)} may be.";

    private string Split() => effect is { Dark.Count: > 0, CutOff.Count: > 0 } ? $" ({effect.Dark.Count} dark, {effect.CutOff.Count} cut off)" : "";
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how much warmer than the air a bundle is estimated to grow.</summary>
internal sealed class RiseStory(CableBundle bundle, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var (load, piece) = (bundle.Load!, bundle.Hottest!);
        return new Working(
            "p = n · I² · r; rise = p · F · (1 + 0.00393 · (air − 20)) / (1 − 0.00393 · p · F); F = 0.908 N + 10.11 √N",
            [
                new("N, cables tied together", bundle.Cables, "", bundle.CablesOrigin),
                new($"I in a conductor of {piece.Name}", load.ConductorAmperes, "A", "the study of power; every cable counted like this one, which is on the safe side"),
                new("n, conductors that carry it", load.Conductors, "", "two or four pairs"),
                new($"conductor of {piece.Name}", piece.SquareMillimetres, "mm²", piece.Cable ?? "not known"),
                new($"air around {bundle.Warmest.Name}", bundle.Warmest.Celsius, "°C", bundle.Warmest.CelsiusOrigin),
                new("the warmest a jacket may become", bundle.JacketCelsius, "°C", bundle.JacketAssumed ? "assumed, common practice, no source" : "catalogue"),
                ReserveInput(entry),
            ],
            [
                new("p, heat of a metre of one cable", $"{load.Conductors} · {Words.Of(load.ConductorAmperes)}² · r", bundle.WattsPerMetre, "W/m"),
                new("F", $"0.908 · {bundle.Cables} + 10.11 · √{bundle.Cables}", BundleHeat.Resistance(bundle.Cables), "K·m/W"),
                new("rise", bundle.RiseKelvins is null ? "none: the estimate runs away" : "from both", bundle.RiseKelvins, "K"),
                new("most", "the smaller of 15 K and what the jacket bears above the air", bundle.MostKelvins, "K"),
            ],
            "an estimate: even heat in a cylinder, constants fitted to a table of the electrical code from memory, good to about a fifth; 15 K: TIA TSB-184-A, guidance");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (bundle.WattsPerMetre is not > 0 || bundle.WattsPerMetre is not { } heat || bundle.MostKelvins <= 0)
            return [];
        var kept = Kept(bundle.MostKelvins);
        return [new("cables tied together", "cables", bundle.Cables, Most(heat, bundle.MostKelvins), kept > 0 ? Most(heat, kept) : null)];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) => bundle.RiseKelvins is { } rise
        ? $"{bundle.Cables} cables tied together along {bundle.Name} are estimated to grow {Words.Of(rise)} K warmer than the air at the core, of {Words.Of(bundle.MostKelvins)} K."
        : $"{bundle.Cables} cables tied together along {bundle.Name} make more heat than they can lose, as far as the estimate goes.";

    private double Most(double heat, double kelvins) => BundleHeat.CablesKeeping(heat, bundle.Warmest.Celsius, kelvins);
}

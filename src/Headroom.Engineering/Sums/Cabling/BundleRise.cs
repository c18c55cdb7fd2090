using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How warm a bundle of powered cables grows.</summary>
internal static class BundleRise
{
    private static readonly NumberInput Cables = new("cables", "cables tied together, all alike", new Bounds(1, 500));
    private static readonly QuantityInput Current = new("current", "in each conductor that carries power", Amperes.Units, new(1, 2000, "mA"));
    private static readonly NumberInput Conductors = new("conductors", "that carry power in each cable", new Bounds(4, 8)) { OneOf = [4, 8], Default = "8", DefaultWhy = "power on all four pairs, the worse case" };
    private static readonly QuantityInput Cable = new("cable", "its conductor, as a gauge or a cross-section", SquareMillimetres.Units, new(0.03, 2.5, "mm2"));
    private static readonly QuantityInput Air = new("temperature", "of the air around the bundle", Celsius.Units, new(-40, 90, "°C")) { Default = Words.Of(RunBinder.AssumedCelsius, "°C"), DefaultWhy = "a warm ceiling is taken (common practice, no source)" };

    private static readonly SumOutput Rise = new("rise", "K", "rise at the core of the bundle");
    private static readonly SumOutput Core = new("core", "°C", "temperature at the core");
    private static readonly SumOutput Heat = new("heat", "W/m", "heat of one metre of one cable at 20 °C");
    private static readonly SumOutput Most = new("most-cables", "", "cables that keep the rise at 15 K");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "bundle-rise",
        Discipline = CablingSums.Discipline,
        Answers = "how warm does a bundle of powered cables grow?",
        Inputs = [Cables, Current, Cable, Conductors, Air],
        Outputs = [Rise, Core, Heat, Most],
        Formula = "dT = p F (1 + a (t − 20)) / (1 − a p F), p = n I² r, F = K1 N + K2 √N",
        Source = "even heat in a cylinder, the form of ISO/IEC TS 29125 (from memory); K1 and K2 fitted to NFPA 70-2017, Table 725.144, from memory: an estimate, good to about a fifth",
        Example = "cables 24 current 300 mA cable 24 AWG temperature 35 C",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (cables, air) = ((int)given[Cables], given[Air]);
        var perMetre = Conductor.OhmsPerMetre(given[Cable], Conductor.ReferenceCelsius);
        var heat = BundleHeat.WattsPerMetre((int)given[Conductors], given[Current], perMetre);
        var most = BundleHeat.CablesKeeping(heat, air, BundleHeat.TargetKelvins);
        var steps = new List<WorkingStep>
        {
            new("r at 20 °C", $"1 / (58 · {Words.Of(given[Cable])} mm²)", 1000 * perMetre, "mΩ/m"),
            new("p", $"{Words.Of(given[Conductors])} · ({Words.Of(given[Current])} A)² · {Words.Of(1000 * perMetre)} mΩ/m", heat, "W/m"),
            new("F", $"{Words.Of(BundleHeat.PerCable)} · {cables} + {Words.Of(BundleHeat.PerRoot)} · √{cables}", BundleHeat.Resistance(cables), "K·m/W"),
        };
        if (BundleHeat.RiseKelvins(heat, cables, air) is not { } rise)
        {
            return new SumAnswer(
                $"No temperature settles: {cables} such cables make more heat than the bundle can lose.",
                [Rise.Is(null), Core.Is(null), Heat.Is(heat), Most.Is(most)],
                steps) { Holds = false };
        }

        steps.Add(new("dT", $"with the copper warming: {Words.Of(heat)} · {Words.Of(BundleHeat.Resistance(cables))} · {Words.Of(Conductor.Factor(air))} / (1 − 0.00393 · {Words.Of(heat * BundleHeat.Resistance(cables))})", rise, "K"));
        return new SumAnswer(
            $"The core grows about {new Told(rise, "K")} warmer than the air, to {new Told(air + rise, "°C")}; the standards want no more than {new Told(BundleHeat.TargetKelvins, "K")}.",
            [Rise.Is(rise), Core.Is(air + rise), Heat.Is(heat), Most.Is(most)],
            steps)
        {
            Holds = rise <= BundleHeat.TargetKelvins && air + rise <= BundleHeat.CommonJacketCelsius,
            Notes = air + rise > BundleHeat.CommonJacketCelsius
                ? [$"Common jackets stand {new Told(BundleHeat.CommonJacketCelsius, "°C")}: read what is printed on this one."]
                : [],
        };
    }
}

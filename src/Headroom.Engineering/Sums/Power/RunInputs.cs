using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Sums.Power;

/// <summary>The inputs that every sum about a run shares, and the resistance they come to.</summary>
internal static class RunInputs
{
    /// <summary>Where the formulas of the resistance are published.</summary>
    public const string Source = "copper: IEC 60028, 1/58 Ω·mm²/m and 0.393 % per K, from memory; gauges: ASTM B258, from memory";

    /// <summary>Volts at the end that feeds.</summary>
    public static QuantityInput Feed { get; } = new("volts", "volts where the run is fed", Volts.Units, new(1, 120, "V"));

    /// <summary>The length.</summary>
    public static QuantityInput Length { get; } = new("length", "length of the run", Metres.Units, new(0.1, 2000, "m"));

    /// <summary>The conductor.</summary>
    public static QuantityInput Cable { get; } = new("cable", "its conductor, as a gauge or a cross-section", SquareMillimetres.Units, new(0.03, 2.5, "mm2"));

    /// <summary>What the device draws.</summary>
    public static QuantityInput Draw { get; } = new("draw", "what the device draws at its connector", Watts.Units, new(0.01, 200, "W"));

    /// <summary>The air around the run.</summary>
    public static QuantityInput Temperature { get; } = new("temperature", "of the conductor; the air around it where it is not bundled", Celsius.Units, new(-50, 120, "°C"))
    {
        Default = Words.Of(RunBinder.AssumedCelsius, "°C"),
        DefaultWhy = "a warm ceiling is taken (common practice, no source)",
    };

    /// <summary>How many pairs carry power.</summary>
    public static NumberInput Pairs { get; } = new("pairs", "pairs that carry power", new Bounds(2, 4))
    {
        OneOf = [2, 4],
        Default = "2",
        DefaultWhy = "two pairs, the worse case",
    };

    /// <summary>How well it conducts.</summary>
    public static QuantityInput Conductivity { get; } = new("conductivity", "as a share of copper's: about 63 % for copper-clad", Share.Units, new(20, 100, "%"))
    {
        Default = "100 %",
        DefaultWhy = "solid copper is taken",
    };

    /// <summary>Resistance of one conductor [Ω/m].</summary>
    public static double OhmsPerMetre(SumGiven given) => Conductor.OhmsPerMetre(given[Cable], given[Temperature], given[Conductivity]);

    /// <summary>Resistance out and back [Ω].</summary>
    public static double LoopOhms(SumGiven given) => PairLoop.PowerLoopOhms(OhmsPerMetre(given), given[Length], (int)given[Pairs]);

    /// <summary>How that was worked out.</summary>
    public static IReadOnlyList<WorkingStep> Steps(SumGiven given) =>
    [
        new("one conductor", PerMetre(given), 1000 * OhmsPerMetre(given), "mΩ/m"),
        new("R, out and back", $"{Words.Of(given[Length])} m · that · 2 / {Words.Of(given[Pairs])} pairs", LoopOhms(given), "Ω"),
    ];

    /// <summary>How the resistance of one conductor was worked out, in numbers.</summary>
    public static string PerMetre(SumGiven given) =>
        $"1 / (58 · {Words.Of(given[Cable] * given[Conductivity])} mm²) · (1 + 0.00393 · ({Words.Of(given[Temperature])} − 20))";

    /// <summary>The cautions a run calls for.</summary>
    public static IReadOnlyList<Caution> Cautions(SumGiven given) => given[Conductivity] < 1 ? [CautionTable.CopperClad] : [];

    /// <summary>The cautions that volts on the pins call for: below what any class is fed with it is passive, above what it is fed with, too much.</summary>
    public static IReadOnlyList<Caution> CautionsOf(double volts) =>
        volts > PoeTypes.All.Max(type => type.SourceVoltsMax) ? [CautionTable.AlwaysOn, CautionTable.TooManyVolts]
        : volts < PoeTypes.All.Min(type => type.SourceVoltsMin) ? [CautionTable.AlwaysOn]
        : [];
}

using Headroom.Domain.Ledgers;
using Headroom.Domain.Records;
using Headroom.Engineering.Readings;
using MathNet.Numerics.Distributions;

namespace Headroom.Engineering.Record;

/// <summary>Measured beside predicted, of one quantity, at all models or at one.</summary>
/// <param name="What">The quantity.</param>
/// <param name="Model">The model; null for all together, also those of no model.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Pairs">The readings with their predictions; one at least.</param>
public sealed record PredictionCheck(string What, string? Model, string Unit, IReadOnlyList<FirmMeasurement> Pairs)
{
    /// <summary>The share of readings that an interval is to cover [1]: an expanded uncertainty of k = 2 (JCGM 100, GUM).</summary>
    public const double Promised = 0.95;

    // Below this a bias, or a want of cover, is said to be there: common practice, no source.
    private const double Level = 0.05;

    private readonly double[] _differences = [.. Pairs.Select(pair => pair.Value - pair.Predicted!.Value)];

    /// <summary>How many pairs there are.</summary>
    public int Count => Pairs.Count;

    /// <summary>By how much measured lies above predicted on average [unit].</summary>
    public double Bias => _differences.Average();

    /// <summary>Standard deviation of the differences [unit]; null below two.</summary>
    public double? Scatter => Spread.Of(_differences);

    /// <summary>How likely so large a bias is by chance [1]; null below two pairs, or when all differ alike.</summary>
    public double? BiasChance => Scatter is > 0 and { } scatter ? 2 * StudentT.CDF(0, 1, Count - 1, -Math.Abs(Bias) * Math.Sqrt(Count) / scatter) : null;

    /// <summary>True when the bias is more than chance makes.</summary>
    public bool IsBiased => BiasChance < Level || (Scatter == 0 && Bias != 0);

    /// <summary>How many predictions stated an interval.</summary>
    public int Stated => Pairs.Count(pair => pair.PredictedPlusMinus is not null);

    /// <summary>How many readings lay within it, that of the instrument added.</summary>
    public int Within => Pairs.Count(IsWithin);

    /// <summary>How likely so few lie within, if the intervals covered what they promise [1]; null when none was stated.</summary>
    public double? CoverChance => Stated == 0 ? null : Binomial.CDF(Promised, Stated, Within);

    /// <summary>True when the stated intervals are too narrow.</summary>
    public bool IsTooNarrow => CoverChance < Level;

    /// <summary>Checks predictions: each quantity by itself, then each quantity at each model where there is more than one.</summary>
    /// <param name="readings">The readings; those without a prediction, bounds, and those of an instrument out of calibration are left.</param>
    /// <returns>The checks.</returns>
    public static IReadOnlyList<PredictionCheck> Of(IEnumerable<FirmMeasurement> readings)
    {
        var checks = new List<PredictionCheck>();
        foreach (var group in readings.Where(Counts).GroupBy(reading => reading.What))
        {
            var pairs = group.ToList();
            checks.Add(new(group.Key, null, pairs[0].Unit, pairs));
            var models = pairs.Where(pair => pair.Model is not null).GroupBy(pair => pair.Model!).ToList();
            checks.AddRange(models.Where(model => model.Count() < pairs.Count).Select(model => new PredictionCheck(group.Key, model.Key, pairs[0].Unit, [.. model])));
        }

        return checks;
    }

    /// <summary>Whether a reading is compared with its prediction: both are known, it is no bound, and its instrument not known to be out of calibration.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>True when it is.</returns>
    public static bool Counts(FirmMeasurement reading) => reading is { Predicted: not null, UpperBound: false } && reading.Calibrated != false;

    /// <summary>How it was worked out.</summary>
    /// <returns>The working.</returns>
    public Working Work() => new(
        "bias = mean of (measured − predicted); scatter = their standard deviation; within when |measured − predicted| ≤ √(u² of the instrument + u² of the prediction)",
        [
            .. Pairs.Take(Shown).SelectMany(pair => new WorkingInput[] { new("measured", pair.Value, pair.Unit, Told(pair.Site, pair)), new("predicted", pair.Predicted, pair.Unit, pair.PredictedPlusMinus is { } half ? $"± {Words.Of(half, pair.Unit)}" : "no interval stated") }),
            .. Count > Shown ? new WorkingInput[] { new($"and {Count - Shown} more pairs", null, "", "in the same file") } : [],
        ],
        [
            new("bias", $"mean of {Count}", Bias, Unit),
            new("scatter", "√(Σ (d − bias)² / (n − 1))", Scatter, Unit),
            new("so large a bias by chance", "Student's t on the differences, two-sided", 100 * BiasChance, "%"),
            new("within the interval", $"of {Stated} that stated one", Within, ""),
            new("so few by chance", $"binomial, {Words.Of(100 * Promised)} % promised", 100 * CoverChance, "%"),
        ],
        "paired differences, NIST/SEMATECH e-Handbook 7.3.1; interval as an expanded uncertainty of k = 2, JCGM 100 (GUM) 6.2");

    // More pairs than this are not listed one by one.
    private const int Shown = 12;

    private static string Told(string site, FirmMeasurement pair) => $"{site}, {pair.At}";

    private static bool IsWithin(FirmMeasurement pair)
    {
        if (pair.PredictedPlusMinus is not { } half)
            return false;
        var own = pair.PlusMinus ?? Math.Abs(pair.Value) * ReadingBoard.AssumedInstrumentShare;
        return Math.Abs(pair.Value - pair.Predicted!.Value) <= Math.Sqrt(own * own + half * half);
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>Puts readings at an ear beside the prediction under their conditions, and makes of both what counts.</summary>
internal sealed class EarReadings(EarCases cases, SourceBook book)
{
    // The fans may have run otherwise than thought, and another level may differ otherwise than declared [dB]: rules of this program.
    private const double StateUncertainty = 3;
    private const double OtherLevelUncertainty = 2;

    /// <summary>A reading at an ear.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="background">The background when it does not say its own [dB(A)].</param>
    /// <param name="paths">The ways that are known.</param>
    /// <param name="usual">The loudest ordinary case, for what the conditions do not say; null when nothing is known.</param>
    public EarReading Of(Reading reading, double? background, IReadOnlyList<SoundPath> paths, EarCase? usual)
    {
        var (levels, told) = LevelsUnder(reading, paths, usual);
        var room = reading.Background ?? background;
        var taken = TakenOut.Of(reading, room);
        var predicted = cases.At(levels, paths).High;
        if (predicted is { } p && !told)
            predicted = p with { Uncertainty = Precision.RootSum(p.Uncertainty, StateUncertainty) };
        double? apart = taken is { Alone: { } alone, Bound: false } && predicted is { } expected ? Precision.Apart(expected, alone) : null;
        var total = predicted is { } equipment ? room is { } r ? Levels.Together(equipment.Value, r) : equipment.Value : (double?)null;
        return new(reading, taken.Branch, taken.Alone, taken.Bound, predicted, total, apart, levels);
    }

    /// <summary>What all readings at an ear make of the prediction; null when they say nothing.</summary>
    public static EarOffset? Offset(IReadOnlyList<EarReading> readings)
    {
        var sound = readings.Where(r => r is { Bound: false, Alone: not null, Predicted: not null }).ToList();
        if (sound.Count == 0)
            return Cut(readings, 0);
        var predicted = sound.MaxBy(r => r.Predicted!.Value.Uncertainty)!.Predicted!.Value.Uncertainty;
        var common = SoundMeter.Common(sound[0].Reading.Instrument, sound[0].Reading.Calibrated);
        var read = Precision.OfOneInstrument([.. sound.Select(r => new Estimate(r.Alone!.Value.Value - r.Predicted!.Value.Value, Own(r, common)))], common);
        var prior = new Estimate(0, predicted);
        return Precision.Judge(Precision.Apart(prior, read)) switch
        {
            Agreement.Agree when Precision.Combine(prior, read) is var both => new(both.Value, both.Uncertainty, "prediction and reading weighed by their precisions"),
            Agreement.Doubtful => new(Math.Max(0, read.Value), null, "prediction and reading lie far apart: the higher one counts until there is a second reading"),
            _ => new(0, null, "the reading contradicts the prediction: they were not put together"),
        };
    }

    /// <summary>What the prediction becomes in a case.</summary>
    public static Estimate With(EarOffset? offset, Estimate predicted, bool otherLevel) => offset is null ? predicted : new(
        predicted.Value + offset.Value,
        offset.Uncertainty is { } u ? Precision.RootSum(u, otherLevel ? OtherLevelUncertainty : 0) : predicted.Uncertainty);

    /// <summary>True when a case runs at other levels than every reading.</summary>
    public static bool OtherLevel(IReadOnlyList<EarReading> readings, EarCase at) =>
        !readings.Any(reading => at.Loud.All(one => reading.Levels.GetValueOrDefault(one.Path.Source.Id) == one.Power.Level));

    private static EarOffset? Cut(IReadOnlyList<EarReading> readings, double least)
    {
        foreach (var bound in readings)
        {
            if (bound is { Bound: true, Alone: { } most, Predicted: { } predicted })
                least = Math.Min(least, most.Value - predicted.Value);
        }

        return least < 0 ? new(least, null, "a reading is an upper bound and cuts the prediction") : null;
    }

    // What a reading has for itself, without what its instrument shares with the others.
    private static double Own(EarReading reading, double common) =>
        Math.Sqrt(Math.Max(SoundMeter.Repeat * SoundMeter.Repeat, reading.Alone!.Value.Uncertainty * reading.Alone.Value.Uncertainty - common * common));

    private (Dictionary<string, int> Levels, bool Told) LevelsUnder(Reading reading, IReadOnlyList<SoundPath> paths, EarCase? usual)
    {
        var levels = new Dictionary<string, int>();
        var told = true;
        var only = paths.Count(path => path.Source.Levels.Count > 1) == 1;
        foreach (var path in paths)
        {
            var source = path.Source;
            var said = ConditionLevel.Of(reading.While, source.Id, only && source.Levels.Count > 1) ?? source.Stated ?? (source.Levels.Count == 1 ? 1 : null);
            told &= said is not null || source.Levels.Count == 0;
            if (said is { } level && (level <= source.Levels.Count || book.LevelsOf(source).Contains(level)))
                levels[source.Id] = level;
            else
                levels[source.Id] = usual?.Loud.FirstOrDefault(one => one.Path.Source.Id == source.Id)?.Power.Level ?? 1;
        }

        return (levels, told);
    }
}

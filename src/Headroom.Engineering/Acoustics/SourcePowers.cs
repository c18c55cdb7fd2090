using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>Turns what is declared of a source into a sound power. Bels and decibels, power and pressure are told apart by unit and key; what does not say which it is stays unknown.</summary>
internal static class SourcePowers
{
    /// <summary>Closer than this a pressure was taken at the outlet, not at a distance [m]: rule of this program.</summary>
    public const double Near = 0.15;

    // Half of the usual K of 3 dB of a declaration (ISO 4871, from memory).
    private const double DeclaredUncertainty = 1.5;

    // Between positions round a device, and of the surface: spread of published pairs of power and pressure.
    private const double PositionUncertainty = 3;

    // Octaves rounded to whole decibels come this near to the level they belong to [dB].
    private const double MostApart = 1;

    // A broad hump at 1 kHz, as of a small fan: invented, and said so wherever it is used [dB, unweighted].
    private static readonly double[] GenericBands = [-9, -7, -4, -1, 0, -1, -4, -10];

    private static double[]? _generic;

    /// <summary>Shares of the A-weighted energy of a spectrum.</summary>
    public static double[] Weights(OctaveLevels? bands) =>
        bands is null ? _generic ??= Shares(GenericBands) : Shares(bands.Decibels);

    /// <summary>The sound power of a source at a fan level.</summary>
    public static SourcePower Of(SoundSource source, int level)
    {
        var declared = source.Levels[level - 1];
        var (power, how, question) = declared.Power is not null ? FromPower(source, declared) : FromPressure(source, declared);
        if (power is { } known && declared is { Bands: { } bands, Power: not null } && Octaves.LevelA(bands.Decibels) is var sum && Math.Abs(sum - known.Value) > MostApart)
            how += $"; its octaves come to {Words.Of(Math.Round(sum, 1))} dB(A) and were shifted to it";
        if (power is { } one && source.Count > 1)
            power = one with { Value = Levels.OfLike(one.Value, source.Count) };
        return new(level, power, source.Count > 1 ? $"{how}; {source.Count} of them" : how, question, Weights(declared.Bands), declared.Bands is null);
    }

    private static (Estimate? Power, string How, string? Question) FromPower(SoundSource source, FanLevel declared)
    {
        var given = declared.Power!;
        var how = $"sound power '{given.Written}', {Origins.Of(given)}";
        return DeclaredSound.LooksLikeBels(given.Value.Value)
            ? (null, how, $"is '{given.Written}' of {source.Model} meant in bels? so little is heard of nothing with mains in it; write the unit B")
            : (new(given.Value.Value, given.PlusMinus / 2 ?? DeclaredUncertainty), how, null);
    }

    private static (Estimate? Power, string How, string? Question) FromPressure(SoundSource source, FanLevel declared)
    {
        if (declared.Pressure is not { } given || declared.Distance is not { } distance)
            return (null, "no figure", $"how loud is {source.Model}? its data sheet declares a sound power in bels, or hold a meter 1 m away");
        var (power, surface) = PowerOf(given.Value.Value, distance.Value.Value, source.Body);
        var u = Precision.RootSum(given.PlusMinus / 2 ?? DeclaredUncertainty, power.Uncertainty);
        return (power with { Uncertainty = u }, $"pressure '{given.Written}' at {distance.Written}, {Origins.Of(given)}, {surface}", null);
    }

    /// <summary>The sound power behind a pressure at a distance, in the open over a plane; its uncertainty is that of the step alone.</summary>
    public static (Estimate Power, string Surface) PowerOf(double pressure, double metres, Body? body)
    {
        if (metres <= Near)
        {
            var atOneMetre = NearField.LevelAt(pressure, NearField.PriorRadius, 1);
            return (new(atOneMetre - PointSource.LevelLessPower(2, 1), NearField.PriorUncertainty), $"at the outlet, carried outwards with an effective radius of {Words.Of(NearField.PriorRadius)} m, which is assumed");
        }

        if (body is { Width: { } width, Depth: { } depth, Height: { } height })
        {
            var surface = BoxSurface.SquareMetres(width.Value.Value, depth.Value.Value, height.Value.Value, metres);
            return (new(pressure + BoxSurface.PowerLessLevel(surface), PositionUncertainty), $"over a box of {Words.Of(surface)} m² round it");
        }

        return (new(pressure - PointSource.LevelLessPower(2, metres), PositionUncertainty), "over a half sphere, its size not being known");
    }

    private static double[] Shares(IReadOnlyList<double> bands)
    {
        var shares = new double[Octaves.Count];
        var sum = 0.0;
        for (var band = 0; band < shares.Length; band++)
            sum += shares[band] = Levels.Energy(bands[band] + Octaves.AWeights[band]);
        for (var band = 0; band < shares.Length; band++)
            shares[band] /= sum;
        return shares;
    }
}

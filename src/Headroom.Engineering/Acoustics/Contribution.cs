namespace Headroom.Engineering.Acoustics;

/// <summary>What one source brings to an ear at one of its fan levels.</summary>
/// <param name="Path">The way it comes.</param>
/// <param name="Power">Its sound power.</param>
/// <param name="Direct">What comes straight [dB(A)]; null when nothing does.</param>
/// <param name="Returned">What the room gives back [dB(A)]; null in the open.</param>
/// <param name="Level">Both together at the ear, with its standard uncertainty [dB(A)].</param>
public sealed record Contribution(SoundPath Path, SourcePower Power, double? Direct, double? Returned, Estimate Level)
{
    /// <summary>How its fan level was found; null where it was given.</summary>
    public LevelChoice? Choice { get; init; }

    /// <summary>Level at the ear less the sound power level [dB].</summary>
    public double Transfer => Level.Value - Power.Power!.Value.Value;

    /// <summary>Works it out.</summary>
    internal static Contribution Of(SoundPath path, SourcePower power)
    {
        var (direct, returned) = (0.0, 0.0);
        for (var band = 0; band < Octaves.Count; band++)
        {
            direct += power.Weights[band] * path.Direct[band];
            returned += power.Weights[band] * path.Returned[band];
        }

        var own = power.Power!.Value;
        var level = own.Value + 10 * Math.Log10(direct + returned);
        var share = direct / (direct + returned);
        var u = Precision.RootSum(own.Uncertainty, path.Uncertainty, share * path.DirectUncertainty, (1 - share) * path.ReturnedUncertainty);
        return new(path, power, own.Value + Levels.Of(direct), own.Value + Levels.Of(returned), new(level, u));
    }

    /// <summary>Several at one ear: their energies add up, and their uncertainties by how much each brings.</summary>
    internal static Estimate? Together(IReadOnlyList<Estimate> levels)
    {
        if (levels.Count == 0)
            return null;
        var (energy, squares) = (0.0, 0.0);
        foreach (var level in levels)
        {
            var own = Levels.Energy(level.Value);
            energy += own;
            squares += own * level.Uncertainty * (own * level.Uncertainty);
        }

        return new(10 * Math.Log10(energy), Math.Sqrt(squares) / energy);
    }
}

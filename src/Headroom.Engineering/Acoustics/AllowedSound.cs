namespace Headroom.Engineering.Acoustics;

/// <summary>Turns the level at an ear around: what the loudest source may bring at most, and what that means for its power, its distance, its cabinet and how many there may be.</summary>
internal sealed class AllowedSound
{
    // More of one kind than this stand nowhere in an office.
    private const double Many = 99;

    private readonly Contribution _one;
    private readonly double _now;
    private readonly double _others;

    /// <summary>Prepares it for the loudest source of a listener; the readings' shift goes with every source alike.</summary>
    public AllowedSound(ListenerSound sound, Contribution loudest)
    {
        var shift = sound.Offset?.Value ?? 0;
        _one = loudest;
        _now = Levels.Energy(loudest.Level.Value + shift);
        _others = sound.Background is { } room ? Levels.Energy(room.Value) : 0;
        foreach (var other in sound.Worst!.Loud)
            _others += ReferenceEquals(other, loudest) ? 0 : Levels.Energy(other.Level.Value + shift);
    }

    /// <summary>By how much the source must become quieter at the ear for a limit to be kept [dB]; negative when it may be louder; null when the others alone are above it.</summary>
    public double? Quieter(double limit) => Allowed(limit) is { } allowed ? 10 * Math.Log10(_now / allowed) : null;

    /// <summary>The greatest sound power that keeps a limit [dB].</summary>
    public double? Power(double limit) => _one.Power.Power!.Value.Value - Quieter(limit);

    /// <summary>The insertion loss from which a limit is kept [dB].</summary>
    public double? Loss(double limit) => Quieter(limit) is { } quieter ? Math.Max(0, _one.Path.Loss + quieter) : null;

    /// <summary>The distance from which a limit is kept [m]; null when what the room gives back is too much already.</summary>
    public double? Metres(double limit)
    {
        if (_one.Path.Metres is not { } metres || _one.Direct is not { } direct || Allowed(limit) is not { } allowed)
            return null;
        var shift = _now / Levels.Energy(_one.Level.Value);
        var straight = Levels.Energy(direct) * shift;
        var left = allowed - (_one.Returned is { } returned ? Levels.Energy(returned) * shift : 0);
        return left > 0 ? metres * Math.Sqrt(straight / left) : null;
    }

    /// <summary>How many such sources at its place keep a limit; null when as many as anybody has do.</summary>
    public double? Count(double limit) => (Allowed(limit) is { } allowed ? Math.Floor(allowed / (_now / _one.Path.Source.Count) * (1 + 1e-9)) : 0) is <= Many and var count ? count : null;

    private double? Allowed(double limit) => Levels.Energy(limit) - _others is > 0 and var left ? left : null;
}

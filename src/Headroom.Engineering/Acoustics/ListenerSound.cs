using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>All that was worked out for one listener, every intermediate figure by name.</summary>
public sealed record ListenerSound
{
    /// <summary>The listener.</summary>
    public required Listener Listener { get; init; }

    /// <summary>The space; null when it does not exist.</summary>
    public required Space? Space { get; init; }

    /// <summary>The background with all equipment off [dB(A)]; null when not measured.</summary>
    public Estimate? Background { get; init; }

    /// <summary>The most that may be heard [dB(A)]: the listener's own limit, else the criterion of the kind of room; null for neither.</summary>
    public double? Limit { get; init; }

    /// <summary>Where the limit comes from, in words.</summary>
    public string LimitOrigin { get; init; } = "";

    /// <summary>The ways of all sources to the ear, those left out included.</summary>
    public IReadOnlyList<SoundPath> Paths { get; init; } = [];

    /// <summary>How many sources count, and of how many all is known.</summary>
    public (int Known, int All) Sources { get; init; }

    /// <summary>What is to be found out of the sources that are not known.</summary>
    public IReadOnlyList<string> Questions { get; init; } = [];

    /// <summary>The cases of an ordinary load, loudest first.</summary>
    public IReadOnlyList<EarCase> Cases { get; init; } = [];

    /// <summary>All at its most; null when that changes nothing.</summary>
    public EarCase? AtMost { get; init; }

    /// <summary>Readings at the ear.</summary>
    public IReadOnlyList<EarReading> Readings { get; init; } = [];

    /// <summary>What the readings make of the prediction; null without readings that say anything.</summary>
    public EarOffset? Offset { get; init; }

    /// <summary>The equipment alone in the loudest case, readings counted [dB(A)]; null when nothing is known.</summary>
    public Estimate? Equipment { get; init; }

    /// <summary>Equipment and background together [dB(A)]; null when one is not known.</summary>
    public Estimate? Total { get; init; }

    /// <summary>The same at the lowest fan levels that are possible [dB(A)]; null likewise.</summary>
    public double? LowTotal { get; init; }

    /// <summary>The case that carries the verdict; null when nothing is known.</summary>
    public EarCase? Worst => Cases.Count > 0 ? Cases[0] : null;

    /// <summary>Equipment less background [dB]; null when one is not known.</summary>
    public double? OverBackground => Equipment?.Value - Background?.Value;

    /// <summary>True when a reading stands in for sources of which no figure is known.</summary>
    public bool AsRead { get; init; }
}

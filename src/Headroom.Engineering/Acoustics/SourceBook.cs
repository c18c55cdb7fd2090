using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>The sound power of every source at every level: by the catalogue, by readings close to it, or both weighed by their precisions.</summary>
internal sealed class SourceBook
{
    private readonly Dictionary<(string Source, int Level), SourcePower> _powers = [];
    private readonly Dictionary<string, SoundSource> _sources;
    private readonly UnitReadings _readings;

    /// <summary>Makes the book, with the readings in it.</summary>
    public SourceBook(Job job, IReadOnlyList<SoundSource> sources, SoundRooms rooms)
    {
        _sources = sources.ToDictionary(source => source.Id);
        _readings = new UnitReadings(rooms);
        foreach (var reading in job.Readings)
        {
            if (reading.What == "sound" && _sources.TryGetValue(reading.Where, out var source))
                Take(reading, source);
        }
    }

    /// <summary>Every reading close to a source.</summary>
    public List<UnitReading> Readings { get; } = [];

    /// <summary>The levels a source has, those that only a reading knows included.</summary>
    public IReadOnlyList<int> LevelsOf(SoundSource source) => source.Levels.Count > 0
        ? [.. source.Levels.Select(level => level.Level)]
        : [.. Readings.Where(r => r.Source.Id == source.Id && r is { Power: not null, Bound: false }).Select(r => r.Level).Distinct().Order()];

    /// <summary>The sound power of a source at a level.</summary>
    public SourcePower Of(SoundSource source, int level)
    {
        if (!_powers.TryGetValue((source.Id, level), out var power))
            _powers[(source.Id, level)] = power = Declared(source, level);
        return power;
    }

    private static SourcePower Declared(SoundSource source, int level) => level <= source.Levels.Count
        ? SourcePowers.Of(source, level)
        : new(level, null, "no figure", source.Question, SourcePowers.Weights(null), true);

    private void Take(Reading reading, SoundSource source)
    {
        var said = ConditionLevel.Of(reading.While, source.Id, only: true);
        var level = said ?? source.Stated ?? 1;
        var known = said is not null || source.Stated is not null || source.Levels.Count <= 1;
        var before = Of(source, level);
        var taken = _readings.Of(reading, source, (level, known), before);
        Readings.Add(taken);
        if (taken.Power is { } read)
            _powers[(source.Id, level)] = UnitReadings.Together(before, read, taken);
    }
}

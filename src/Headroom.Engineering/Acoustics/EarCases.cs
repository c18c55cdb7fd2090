using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Works out what is heard at an ear case by case: each named temperature of the spaces where the sources stand, with an ordinary load, and all at its most.</summary>
internal sealed class EarCases(SourceBook book, SoundRooms rooms, InletAir inlets)
{
    private const string Usual = "as it stands";

    /// <summary>The cases of an ordinary load, loudest first; those that come to the same stand together.</summary>
    /// <param name="paths">The ways that are known.</param>
    /// <param name="only">The cases in which somebody is there; null or empty for all.</param>
    public List<EarCase> Ordinary(IReadOnlyList<SoundPath> paths, IReadOnlyList<string>? only = null)
    {
        var cases = new List<EarCase>();
        foreach (var name in Names(paths, only ?? []))
            Add(cases, Of(name, paths, source => (Inlet(source, name), source.Load.TypicalWatts)));
        cases.Sort((left, right) => (right.High?.Value ?? double.MinValue).CompareTo(left.High?.Value ?? double.MinValue));
        return cases;
    }

    /// <summary>All at its most: the warmest named case and the greatest load.</summary>
    public EarCase AtMost(IReadOnlyList<SoundPath> paths) =>
        Of("at its most", paths, source => (Inlet(source, null), source.Load.WorstWatts));

    /// <summary>All at levels that are given, such as those of a reading.</summary>
    public EarCase At(IReadOnlyDictionary<string, int> levels, IReadOnlyList<SoundPath> paths)
    {
        var loud = new List<Contribution>(paths.Count);
        foreach (var path in paths)
        {
            if (levels.TryGetValue(path.Source.Id, out var level) && book.Of(path.Source, level) is { Power: not null } power)
                loud.Add(Contribution.Of(path, power));
        }

        var together = Contribution.Together([.. loud.Select(one => one.Level)]);
        return new("as read", [], loud, together, together);
    }

    private EarCase Of(string name, IReadOnlyList<SoundPath> paths, Func<SoundSource, (double? Inlet, double? Watts)> drivers)
    {
        var choices = new List<LevelChoice>(paths.Count);
        var (loud, low) = (new List<Contribution>(paths.Count), new List<Estimate>(paths.Count));
        foreach (var path in paths)
        {
            var (inlet, watts) = drivers(path.Source);
            var choice = Choice(path.Source, inlet, watts);
            choices.Add(choice);
            if (book.Of(path.Source, choice.High) is { Power: not null } high)
                loud.Add(Contribution.Of(path, high) with { Choice = choice });
            if (book.Of(path.Source, choice.Low) is { Power: not null } least)
                low.Add(Contribution.Of(path, least).Level);
        }

        return new(name, choices, loud, Contribution.Together(low), Contribution.Together([.. loud.Select(one => one.Level)]));
    }

    private LevelChoice Choice(SoundSource source, double? inlet, double? watts)
    {
        if (source.Levels.Count > 0)
            return LevelChoices.Of(source, inlet, watts);
        var read = book.LevelsOf(source);
        var level = source.Stated ?? (read.Count > 0 ? read[^1] : 1);
        return new(level, level, $"level {level}, as it was read", null);
    }

    private List<string> Names(IReadOnlyList<SoundPath> paths, IReadOnlyList<string> only)
    {
        var names = new List<string>();
        foreach (var path in paths)
        {
            if (path.Source is not { Stated: null, Levels.Count: > 1 })
                continue;
            var cases = inlets.Cases(path.Source.Id);
            if (cases.Count == 0 && rooms.Space(path.Source.Space) is { } space)
                cases = [.. space.Temperatures.Keys];
            names.AddRange(cases.Where(name => !names.Contains(name) && (only.Count == 0 || only.Contains(name))));
        }

        return names.Count > 0 ? names : [Usual];
    }

    private double? Inlet(SoundSource source, string? name)
    {
        // What the study of heat found, where it could; else the air of the space stands in.
        if (inlets.Of(source.Id, name) is { } known)
            return known;
        if (rooms.Space(source.Space) is not { } space || space.Temperatures.Count == 0)
            return null;
        return name is not null && space.Temperatures.TryGetValue(name, out var own) ? Warm(own) : space.Temperatures.Values.Max(Warm);
    }

    private static double Warm(Given<Celsius> given) => given.Value.Value + (given.PlusMinus ?? 0);

    private static void Add(List<EarCase> cases, EarCase one)
    {
        var like = cases.FindIndex(other => other.Choices.Select(c => (c.Low, c.High)).SequenceEqual(one.Choices.Select(c => (c.Low, c.High))));
        if (like < 0)
            cases.Add(one);
        else
            cases[like] = cases[like] with { Name = $"{cases[like].Name}, {one.Name}" };
    }
}

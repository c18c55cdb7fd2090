using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>Applies the physics of sound to a bound design: what is heard at every ear.</summary>
public static class AcousticStudy
{
    // A background from a hand meter, where no interval is written [dB].
    private const double BackgroundUncertainty = 1.5;

    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="loadOf">What the ports of a switch give, by its id: the fans follow it.</param>
    /// <param name="inlets">The air at each inlet, as the study of heat found it; null where the air of the space is to stand for it.</param>
    /// <returns>The result; entries are made from it by <see cref="AcousticLedger"/>.</returns>
    public static AcousticResult Of(BoundDesign bound, Func<string, SwitchLoad> loadOf, InletAir? inlets = null)
    {
        var survey = bound.Job.Survey;
        if (survey.Listeners.Count == 0)
            return new(bound, [], [], []);
        var sources = SoundSources.Of(bound, loadOf);
        var rooms = new SoundRooms(bound.Job);
        var book = new SourceBook(bound.Job, sources, rooms);
        var finder = new PathFinder(bound.Job, bound.Catalogue, rooms);
        var cases = new EarCases(book, rooms, inlets ?? InletAir.NotKnown);
        var listeners = survey.Listeners.Select(listener => Of(listener, [.. sources.Select(source => finder.Of(source, listener))], (bound.Job, rooms, book, cases)));
        return new(bound, [.. listeners], sources, book.Readings) { Inlets = inlets ?? InletAir.NotKnown };
    }

    private static ListenerSound Of(Listener listener, List<SoundPath> paths, (Job Job, SoundRooms Rooms, SourceBook Book, EarCases Cases) with)
    {
        var space = with.Rooms.Space(listener.In);
        var (limit, origin) = LimitOf(listener, space);
        var counting = paths.Where(path => path.LeftOut is null).ToList();
        var known = counting.Where(path => path.Known && with.Book.LevelsOf(path.Source).Any(level => with.Book.Of(path.Source, level).Power is not null)).ToList();
        var questions = counting.Except(known).Select(path => path.Question ?? Missing(path.Source, with.Book)).Distinct().ToList();
        var ordinary = with.Cases.Ordinary(known, listener.When);
        var readings = new EarReadings(with.Cases, with.Book);
        var background = space?.Background?.Value.Value;
        var read = with.Job.Readings.Where(r => r.What == "sound" && r.Where == listener.Id)
            .Select(r => readings.Of(r, background, known, ordinary.FirstOrDefault())).ToList();
        var sound = new ListenerSound
        {
            Listener = listener, Space = space, Limit = limit, LimitOrigin = origin, Paths = paths, Sources = (known.Count, counting.Count), Questions = questions,
            Background = space?.Background is { } given ? new(given.Value.Value, given.PlusMinus / 2 ?? BackgroundUncertainty) : null,
            Cases = ordinary, AtMost = known.Count > 0 ? with.Cases.AtMost(known) : null, Readings = read, Offset = questions.Count == 0 ? EarReadings.Offset(read) : null,
        };
        return Total(sound);
    }

    private static ListenerSound Total(ListenerSound sound)
    {
        // With sources of which nothing is known a reading with all of them running says more than the sum of the others.
        var asRead = sound.Questions.Count > 0 ? sound.Readings.LastOrDefault(r => r is { Bound: false, Alone: not null }) : null;
        var equipment = asRead?.Alone ?? (sound.Worst?.High is { } high ? EarReadings.With(sound.Offset, high, EarReadings.OtherLevel(sound.Readings, sound.Worst)) : null);
        var low = asRead?.Alone?.Value ?? sound.Worst?.Low?.Value + (sound.Offset?.Value ?? 0);
        // No equipment at all leaves the background: that is known, not silence.
        var nothing = sound.Sources.All == 0;
        return sound with
        {
            AsRead = asRead is not null,
            Equipment = equipment,
            Total = sound.Background is not { } room ? null
                : asRead is { Reading: var r } && (r.Background ?? room.Value) == room.Value ? equipment!.Value with { Value = r.Value }
                : equipment is { } e ? Contribution.Together([e, room]) : nothing ? room : null,
            LowTotal = sound.Background is { } b && low is { } l ? Levels.Together(l, b.Value) : null,
        };
    }

    private static (double? Limit, string Origin) LimitOf(Listener listener, Space? space)
    {
        if (listener.Limit is { } stated)
            return (stated.Value.Value, $"{Origins.Of(stated)}{(listener.Why is { } why ? $", {why}" : "")}");
        return RoomCriteria.Of(space?.Kind) is { } criterion ? (criterion.Most, $"{criterion.Kind}: {criterion.Source}") : (null, "");
    }

    private static string Missing(SoundSource source, SourceBook book) =>
        source.Question ?? source.Levels.Select(level => book.Of(source, level.Level).Question).FirstOrDefault(question => question is not null)
        ?? $"how loud is {source.Model}?";
}

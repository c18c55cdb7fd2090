using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Acoustics;

/// <summary>Entries for the level at an ear: equipment and background together against the listener's limit.</summary>
internal static class LevelEntries
{
    /// <summary>The entry of one listener.</summary>
    public static LedgerEntry Of(ListenerSound sound, AcousticResult result, Reserve reserve)
    {
        var demand = sound.Total?.Value ?? sound.Equipment?.Value;
        var parts = Parts(sound);
        var verdict = Verdict(sound, demand, reserve, parts);
        var id = sound.Listener.Id;
        var most = sound.AtMost?.High is { } high && sound.Background is { } room && !sound.AsRead ? Levels.Together(high.Value + (sound.Offset?.Value ?? 0), room.Value) : null;
        return new LedgerEntry
        {
            Id = $"{AcousticLedger.Discipline}/{id}/level",
            Discipline = AcousticLedger.Discipline,
            Subject = id,
            Quantity = "level",
            What = $"sound{(sound.AsRead ? ", as read" : SoundWords.Case(sound.Worst))}",
            Unit = "dB(A)",
            Kind = "sound",
            Demand = demand,
            Peak = most > demand + 0.05 ? most : null,
            Limit = sound.Limit,
            Reserve = sound.Limit is { } limit ? reserve.Of(limit) : null,
            Studied = verdict,
            Parts = parts,
            PlusMinus = 2 * (sound.Total ?? sound.Equipment)?.Uncertainty,
            Question = verdict == Domain.Ledgers.Verdict.Unknown ? Question(sound) : null,
            Assumed = Assumed(sound, result.Inlets),
            Beside = new LateList<BesideRow>(() => Beside(sound)),
            Advice = verdict is Domain.Ledgers.Verdict.Short or Domain.Ledgers.Verdict.Tight ? new LateList<string>(() => SoundAdvice.Of(sound, result, reserve)) : [],
            Cautions = verdict is Domain.Ledgers.Verdict.Short or Domain.Ledgers.Verdict.Tight && SoundAdvice.Cabinet(sound, result, 0) is not null ? [CautionTable.WarmCabinet] : [],
            Story = new LevelStory(sound, reserve),
        };
    }

    // The background is a part of the level like any source.
    private static KnownParts? Parts(ListenerSound sound)
    {
        var (known, all) = sound.AsRead ? (sound.Sources.All, sound.Sources.All) : sound.Sources;
        known += sound.Background is null ? 0 : 1;
        return known == all + 1 ? null : new(known, all + 1);
    }

    private static Verdict Verdict(ListenerSound sound, double? demand, Reserve reserve, KnownParts? parts)
    {
        var verdict = Judge.Of(demand, sound.Limit, reserve, parts);
        if (verdict == Domain.Ledgers.Verdict.Unknown || sound.Worst?.Question is null || sound.AsRead)
            return verdict;
        // The fan level is not known: only what holds at the lowest and at the highest is a verdict.
        return Judge.Of(sound.LowTotal, sound.Limit, reserve) == verdict ? verdict : Domain.Ledgers.Verdict.Unknown;
    }

    private static string Question(ListenerSound sound) =>
        sound.Questions.Count > 0 && !sound.AsRead ? sound.Questions[0]
        : sound.Background is null ? $"how loud is {sound.Listener.In} with all equipment off? a minute with a meter says"
        : sound.Limit is null ? $"how loud may it be for {sound.Listener.Id}? ask, or write what kind of room {sound.Listener.In} is"
        : sound.Worst?.Question ?? "what it depends on is not known";

    private static List<string> Assumed(ListenerSound sound, InletAir inlets)
    {
        var assumed = new List<string>();
        foreach (var path in sound.Paths)
        {
            if (path.LeftOut is { } left)
                assumed.Add(left);
            assumed.AddRange(path.Assumed);
        }

        if (sound.Worst?.Loud.Any(one => one.Power.Generic) == true)
            assumed.Add("octaves not known: the broad hump of a small fan taken, which is made up");
        if (sound.Worst is { } worst && worst.Choices.Any(choice => choice.Why.Contains("at the inlet", StringComparison.Ordinal))
            && worst.Loud.Any(one => one.Path.Source.Levels.Count > 1 && inlets.Of(one.Path.Source.Id, null) is null))
            assumed.Add("the air of the space taken for that at the inlet: a cabinet makes it warmer and the fans faster");
        return [.. assumed.Distinct()];
    }

    private static List<BesideRow> Beside(ListenerSound sound)
    {
        var rows = new List<BesideRow>();
        foreach (var other in sound.Cases.Skip(1))
            Add(rows, sound, other);
        if (sound.AtMost is { } most)
            Add(rows, sound, most);
        if (sound.Worst is { Question: not null } worst && sound.LowTotal is { } low)
            rows.Add(new("case", $"{worst.Name}, at the lowest levels possible", low, sound.Limit, ""));
        if (sound.Background is { } room)
            rows.Add(new("case", "all equipment off", room.Value, sound.Limit, room.Value > sound.Limit ? "the room itself is above the limit: nothing that is installed mends that" : ""));
        return rows;
    }

    private static void Add(List<BesideRow> rows, ListenerSound sound, EarCase other)
    {
        if (other.High is not { } predicted)
            return;
        var equipment = EarReadings.With(sound.Offset, predicted, EarReadings.OtherLevel(sound.Readings, other)).Value;
        var level = sound.Background is { } room ? Levels.Together(equipment, room.Value) : equipment;
        rows.Add(new("case", other.Name, level, sound.Limit, string.Join(", ", other.Loud.Where(one => one.Path.Source.Levels.Count > 1).Select(SoundWords.Source))));
    }
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Acoustics;

/// <summary>Tells what is heard at an ear, works it out, and up to where it holds.</summary>
internal sealed class LevelStory(ListenerSound sound, Reserve reserve) : IEntryStory
{
    // Where a bar begins when no background is known: so far below the limit that nothing there matters [dB].
    private const double BarBelowLimit = 20;

    /// <inheritdoc/>
    public double? Floor => sound.Background?.Value ?? sound.Limit - BarBelowLimit;

    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        var id = sound.Listener.Id;
        if (entry.Question is { } question)
            return $"{id}: {question}.";
        if (entry.Demand is not { } level || entry.Limit is not { } limit)
            return $"{id}: not worked out.";
        var by = sound.AsRead ? "as read"
            : sound.Worst?.Loudest is { } loudest ? $"most of it from {SoundWords.Source(loudest)} {Where(loudest.Path)}"
            : "no equipment is heard there";
        var heard = sound.OverBackground is { } over
            ? $" The equipment is {SoundWords.Level(Math.Abs(over))} dB {(over < 0 ? "below" : "above")} the background: {SoundWords.Of(Audibility.Of(over))}."
            : "";
        return $"{id} hears {SoundWords.Level(level)} dB(A) of the {SoundWords.Level(limit)} dB(A) allowed, {by}.{heard}";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => LevelWorking.Of(sound);

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (sound.AsRead || sound.Limit is not { } limit || sound.Worst?.Loudest is not { } loudest)
            return [];
        var allowed = new AllowedSound(sound, loudest);
        var (kept, id) = (limit - reserve.Of(limit), loudest.Path.Source.Id);
        var rows = new List<Holds>
        {
            new($"sound power of {id}", "dB(A)", loudest.Power.Power!.Value.Value, allowed.Power(limit), allowed.Power(kept)),
        };
        if (loudest.Path.Metres is { } metres)
            rows.Add(new($"distance of {id}", "m", metres, allowed.Metres(limit), allowed.Metres(kept), UpTo: false));
        rows.Add(new($"insertion loss round {id}", "dB", loudest.Path.Loss, allowed.Loss(limit), allowed.Loss(kept), UpTo: false));
        rows.Add(new($"devices like {id} at its place", "", loudest.Path.Source.Count, allowed.Count(limit), allowed.Count(kept)));
        return rows;
    }

    private static string Where(SoundPath path) => path.Metres is { } metres ? $"{Words.Of(metres)} m away, {path.Way}" : path.Way;
}

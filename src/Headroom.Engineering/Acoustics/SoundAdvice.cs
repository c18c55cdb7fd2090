using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>What would mend a level that is too high, costless first; only what keeps the limit is said.</summary>
internal static class SoundAdvice
{
    // No room of an office lets anybody move a switch farther than this [m].
    private const double FarthestMove = 15;

    /// <summary>The advice for a listener.</summary>
    public static List<string> Of(ListenerSound sound, AcousticResult result, Reserve reserve)
    {
        var advice = new List<string>();
        if (sound.Limit is not { } limit)
            return advice;
        if (sound.Background is { } room && room.Value >= limit)
            advice.Add($"nothing that is installed mends it: {sound.Listener.In} is at {SoundWords.Level(room.Value)} dB(A) with all equipment off");
        if (sound.AsRead || sound.Worst?.Loudest is not { } loudest)
            return advice;
        var allowed = new AllowedSound(sound, loudest);
        var wanted = limit - reserve.Of(limit);
        var id = loudest.Path.Source.Id;
        if (allowed.Metres(wanted) is { } metres && metres <= FarthestMove && loudest.Path.Metres < metres)
            advice.Add($"{id} {Words.Of(Math.Ceiling(metres * 10) / 10)} m or more from {sound.Listener.Id} keeps it, at no cost but the cables");
        if (allowed.Quieter(wanted) is not { } quieter || quieter <= 0)
            return advice;
        if (Cabinet(sound, result, reserve.Of(limit)) is { } cabinet)
            advice.Add($"a cabinet '{cabinet.Id}' round it keeps {Words.Of(cabinet.InsertionLoss!.Value.Value)} dB, if its air stays as cool");
        advice.Add($"a device that is {SoundWords.Level(quieter)} dB quieter: at most {SoundWords.Level(allowed.Power(wanted)!.Value)} dB(A) of sound power where it stands");
        return advice;
    }

    /// <summary>The cabinet of the catalogue that keeps just enough; null when none does, or the source is in one.</summary>
    public static CabinetModel? Cabinet(ListenerSound sound, AcousticResult result, double reserve)
    {
        if (sound is not { AsRead: false, Limit: { } limit, Worst.Loudest: { } loudest } || loudest.Path.Source.Rack?.Cabinet is not null)
            return null;
        if (new AllowedSound(sound, loudest).Quieter(limit - reserve) is not (> 0 and var quieter))
            return null;
        CabinetModel? least = null;
        foreach (var model in result.Bound.Catalogue.Cabinets.Values)
        {
            if (model.InsertionLoss?.Value.Value >= quieter && !(model.InsertionLoss.Value.Value >= least?.InsertionLoss!.Value.Value))
                least = model;
        }

        return least;
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Acoustics;

/// <summary>Answers the questions people ask about sound.</summary>
internal static class AcousticAnswers
{
    /// <summary>The answers for every listener of whom enough is known.</summary>
    public static IEnumerable<Answer> Of(AcousticResult result)
    {
        foreach (var sound in result.Listeners)
        {
            if (sound.OverBackground is { } over && sound.Questions.Count == 0 | sound.AsRead)
                yield return new Answer(sound.Listener.Id, "Is the equipment heard there?", Heard(sound, over));
            if (AcousticFigures.SpeechToNoise(sound) is { } speech && sound.Questions.Count == 0 | sound.AsRead)
                yield return new Answer(sound.Listener.Id, "Can one telephone or record there?", Spoken(speech));
        }
    }

    private static string Heard(ListenerSound sound, double over)
    {
        var hearing = Audibility.Of(over);
        var where = $"{SoundWords.Level(sound.Equipment!.Value.Value)} dB(A) alone, {SoundWords.Level(Math.Abs(over))} dB {(over < 0 ? "below" : "above")} the background of {SoundWords.Level(sound.Background!.Value.Value)}";
        return $"{Words.Capital(SoundWords.Of(hearing))}: {where}.";
    }

    private static string Spoken(double speech) =>
        $"{Words.Capital(Speech.UseOf(speech))}: normal speech {Words.Of(AcousticFigures.Microphone)} m from a microphone is {SoundWords.Level(speech)} dB above the noise.";
}

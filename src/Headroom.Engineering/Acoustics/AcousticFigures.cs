using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Acoustics;

/// <summary>Figures of sound that have no limit of their own: the equipment alone, how far it is above the background, what a microphone gets.</summary>
internal static class AcousticFigures
{
    /// <summary>How far a microphone on a desk is from the lips [m]: a laptop.</summary>
    public const double Microphone = 0.5;

    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(AcousticResult result) => result.Listeners.SelectMany(OfListener);

    /// <summary>Speech less noise at a microphone at the listener's place [dB]; null when the level there is not known.</summary>
    public static double? SpeechToNoise(ListenerSound sound) => Speech.LevelAt(Speech.NormalLevel, Microphone) - sound.Total?.Value;

    private static IEnumerable<Figure> OfListener(ListenerSound sound)
    {
        var id = sound.Listener.Id;
        var question = sound.Questions.Count > 0 ? sound.Questions[0] : sound.Background is null ? $"how loud is {sound.Listener.In} with all equipment off?" : null;
        yield return Figure(id, ("equipment", "the equipment alone, at the ear"), (sound.Equipment?.Value, "dB(A)", sound.Equipment is null ? question : null), () => LevelWorking.Of(sound));
        yield return Figure(id, ("over-background", "equipment less background, at the ear"), (sound.OverBackground, "dB", sound.OverBackground is null ? question : null), () => OverBackground(sound));
        yield return Figure(id, ("speech-to-noise", "speech less noise at a microphone there"), (SpeechToNoise(sound), "dB", sound.Total is null ? question : null), () => Microphoned(sound));
    }

    private static Figure Figure(string id, (string Quantity, string What) of, (double? Value, string Unit, string? Question) figure, Func<Working> work) =>
        new($"{AcousticLedger.Discipline}/{id}/{of.Quantity}", id, of.What, figure.Value, figure.Unit, figure.Question, work);

    private static Working OverBackground(ListenerSound sound) => new(
        "equipment − background",
        [new("equipment", sound.Equipment?.Value, "dB(A)", "this study"), new("background", sound.Background?.Value, "dB(A)", Binding.Origins.Of(sound.Space?.Background))],
        [new("over the background", "the difference", sound.OverBackground, "dB")],
        "10 dB below is not noticed (from the just noticeable change of level, textbooks, from memory); 5 and 10 dB above as a scale from BS 4142:2014, which is written for dwellings");

    private static Working Microphoned(ListenerSound sound) => new(
        "speech at 1 m − 20 lg r − noise",
        [
            new("normal speech at 1 m", Speech.NormalLevel, "dB(A)", "standard, ISO 9921, from memory"),
            new("r from the lips", Microphone, "m", "assumed, a laptop"),
            new("noise", sound.Total?.Value, "dB(A)", "this study"),
        ],
        [
            new("speech at the microphone", "60 − 20 lg 0.5", Speech.LevelAt(Speech.NormalLevel, Microphone), "dB(A)"),
            new("speech less noise", "the difference", SpeechToNoise(sound), "dB"),
        ],
        "15 dB for a call, 20 to record a meeting, 30 for a voice-over: common practice, no source");
}

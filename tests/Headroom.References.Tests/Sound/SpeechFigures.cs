using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class SpeechFigures
{
    private static readonly string[] Bands = ["250", "500", "1k", "2k", "4k", "8k"];

    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "SE" => Effort(printed.What),
        "SL" => At(Told.Numbers(printed.What)),
        "SI" => Heard(printed.What),
        "SM" => Microphone(printed.What),
        _ => Needed(printed),
    };

    private static double At(double[] n) => Speech.LevelAt(n[0], n[2]);

    private static Figure Needed(Printed printed) => printed.What switch
    {
        "to talk" => Speech.ForTalk,
        "for a call" => Speech.ForCall,
        "to record a meeting" => Speech.ForRecording,
        "for a voice-over" => Speech.ForVoiceOver,
        "for a studio" => Speech.ForStudio,
        _ => PrintedTables.Nothing(printed),
    };

    // "normal, 250", "normal: sum"
    private static Figure Effort(string what)
    {
        var octaves = Levels6(what.Split(',', ':')[0]);
        var asked = what[(what.LastIndexOf(' ') + 1)..];
        return asked switch
        {
            "sum" => Levels.Together(octaves),
            "A-weighted" => Levels.Together([.. octaves.Select((level, band) => level + Octaves.AWeights[band + 2])]),
            _ => octaves[Array.IndexOf(Bands, asked)],
        };
    }

    // The noise is the fan of SP-2, shifted to the level given.
    private static Figure Heard(string what)
    {
        var (given, asked) = Told.Split(what);
        var n = Told.Numbers(given);
        var fan = Told.Numbers(Told.Split(Csv.Read("sound-spectra").First(row => row[0] == "SP-2")[1]).Given);
        var shift = n[1] - Octaves.LevelA(fan);
        var speech = Levels6(given.Split(' ')[0]);
        double[] differences = [.. speech.Select((level, band) => Speech.LevelAt(level, n[0]) - (fan[band + 2] + shift))];
        return asked == "index" ? Speech.Index(differences) : differences[Array.IndexOf(Bands, asked)];
    }

    // "60 at 1 m, microphone at 0.5 m in 51.5"
    private static Figure Microphone(string what)
    {
        var n = Told.Numbers(what);
        var difference = Speech.LevelAt(n[0], n[2]) - n[3];
        return Told.Split(what).Asked == "difference" ? difference
            : Speech.UseOf(difference).StartsWith("a call is usable", StringComparison.Ordinal) ? "usable"
            : difference >= Speech.ForCall ? "good" : "none";
    }

    private static double[] Levels6(string effort) => [.. Speech.OctavesOf(Enum.Parse<VocalEffort>(effort, ignoreCase: true))];
}

namespace Headroom.Engineering.Acoustics;

/// <summary>The words in which sound is told.</summary>
internal static class SoundWords
{
    /// <summary>A level to a tenth: nobody hears more.</summary>
    public static string Level(double dB) => Words.Of(Math.Round(dB, 1));

    /// <summary>How it is heard.</summary>
    public static string Of(Hearing hearing) => hearing switch
    {
        Hearing.NotHeard => "not heard, unless it has a tone",
        Hearing.Faint => "heard by one who listens for it",
        Hearing.Heard => "heard",
        Hearing.Disturbing => "disturbing",
        _ => "very disturbing",
    };

    /// <summary>The case behind what an entry is a limit of; nothing when there is but one.</summary>
    public static string Case(EarCase? worst) => worst is null || worst.Name == "as it stands" ? "" : $", {worst.Name}";

    /// <summary>A source and its level.</summary>
    public static string Source(Contribution one) => one.Path.Source.Levels.Count > 1 ? $"{one.Path.Source.Id} at level {one.Power.Level}" : one.Path.Source.Id;
}

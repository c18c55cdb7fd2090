namespace Headroom.Engineering.Acoustics;

/// <summary>Speech against steady noise: what a face, a call and a recording need.</summary>
public static class Speech
{
    /// <summary>A-weighted level of normal speech 1 m from the lips [dB(A)]: ISO 9921, from memory.</summary>
    public const double NormalLevel = 60;

    /// <summary>Enough to talk face to face [dB]: Moore 1997, second-hand.</summary>
    public const double ForTalk = 6;

    /// <summary>Enough for a call without complaint from the far end [dB]: common practice; from here on all bands are wholly audible.</summary>
    public const double ForCall = 15;

    /// <summary>Enough for dictation or to record a meeting [dB]: common practice, no source.</summary>
    public const double ForRecording = 20;

    /// <summary>Enough for a voice-over [dB]: common practice, no source.</summary>
    public const double ForVoiceOver = 30;

    /// <summary>Enough for a studio [dB]: common practice, no source.</summary>
    public const double ForStudio = 45;

    /// <summary>How many octave bands speech has, from 250 Hz to 8 kHz.</summary>
    public const int Bands = 6;

    // ANSI S3.5-1997, table 4, second-hand: octave levels at 1 m in front of the lips [dB].
    private static ReadOnlySpan<double> Normal => [57.23, 59.75, 53.49, 48.80, 43.81, 38.61];

    private static ReadOnlySpan<double> Raised => [61.46, 65.63, 62.34, 56.80, 51.26, 42.55];

    private static ReadOnlySpan<double> Loud => [64.03, 70.33, 70.64, 65.87, 59.89, 48.87];

    private static ReadOnlySpan<double> Shout => [64.98, 74.72, 79.79, 75.80, 68.89, 58.20];

    // The same table: how much each band matters.
    private static ReadOnlySpan<double> Importance => [0.0617, 0.1671, 0.2373, 0.2648, 0.2142, 0.0549];

    /// <summary>Octave levels of speech 1 m in front of the lips, 250 Hz to 8 kHz.</summary>
    /// <param name="effort">How hard the talker tries.</param>
    /// <returns>The six levels [dB].</returns>
    public static ReadOnlySpan<double> OctavesOf(VocalEffort effort) => effort switch
    {
        VocalEffort.Raised => Raised,
        VocalEffort.Loud => Loud,
        VocalEffort.Shout => Shout,
        _ => Normal,
    };

    /// <summary>Level of speech at another distance from the lips.</summary>
    /// <param name="atOneMetre">Its level at 1 m [dB].</param>
    /// <param name="metres">The distance [m]; above 0, good from about 0.15.</param>
    /// <returns>The level [dB].</returns>
    /// <remarks>Source: point source, −20 lg r; nearer the mouth ± 3 dB.</remarks>
    public static double LevelAt(double atOneMetre, double metres)
    {
        Require.Above0(metres, "m");
        return atOneMetre - 20 * Math.Log10(metres);
    }

    /// <summary>Distance from the lips at which speech has a level.</summary>
    /// <param name="atOneMetre">Its level at 1 m [dB].</param>
    /// <param name="level">The level [dB].</param>
    /// <returns>The distance [m].</returns>
    /// <remarks>Source: the same, solved for the distance.</remarks>
    public static double MetresOf(double atOneMetre, double level) => Math.Pow(10, (atOneMetre - level) / 20);

    /// <summary>How much of a band of speech is heard above noise.</summary>
    /// <param name="difference">Speech - noise in the band [dB].</param>
    /// <returns>The share [1]: nothing at −15 dB, all at +15.</returns>
    /// <remarks>Source: ANSI S3.5-1997, without masking, hearing threshold and level distortion.</remarks>
    public static double BandAudibility(double difference) => Math.Clamp((difference + 15) / 30, 0, 1);

    /// <summary>Speech index, simplified: how much of speech gets through steady noise.</summary>
    /// <param name="differences">Speech - noise in the bands of 250 Hz to 8 kHz [dB].</param>
    /// <returns>The index [1].</returns>
    /// <remarks>Source: ANSI S3.5-1997, table 4 (importance), simplified; STI without reverberation.</remarks>
    public static double Index(IReadOnlyList<double> differences)
    {
        Require.Between(Bands, Bands, differences.Count);
        var index = 0.0;
        for (var band = 0; band < Bands; band++)
            index += Importance[band] * BandAudibility(differences[band]);
        return index;
    }

    /// <summary>What a microphone can be used for.</summary>
    /// <param name="difference">Speech - noise at the microphone [dB], A-weighted.</param>
    /// <returns>The words.</returns>
    /// <remarks>Source: thresholds of common practice, as the constants say.</remarks>
    public static string UseOf(double difference) => difference switch
    {
        < ForTalk => "neither call nor recording",
        < ForCall => "a call is usable, a recording is not",
        < ForRecording => "a call is good, a recording poor",
        < ForVoiceOver => "a call is good, a meeting can be recorded",
        < ForStudio => "good enough for a voice-over",
        _ => "good enough for a studio",
    };
}

namespace Headroom.Engineering.Acoustics;

/// <summary>Whether a sound is heard against what is there anyway, and how much it disturbs.</summary>
public static class Audibility
{
    /// <summary>Steady broadband noise this far below a background of like spectrum is not noticed [dB]: derived from the least change of level that is.</summary>
    public const double NotNoticed = -10;

    /// <summary>A tone is still heard down to here [dB]: common practice, no source.</summary>
    public const double ToneNotNoticed = -15;

    /// <summary>Above the background by this much, a sound is likely to disturb [dB]: scale of BS 4142, which is written for dwellings.</summary>
    public const double Disturbs = 5;

    /// <summary>Above the background by this much, it disturbs for certain [dB]: the same.</summary>
    public const double DisturbsMuch = 10;

    /// <summary>Says how a sound is heard.</summary>
    /// <param name="overBackground">Its level less that of the background [dB].</param>
    /// <param name="tonal">True when it has a tone.</param>
    /// <returns>The word for it.</returns>
    /// <remarks>Source: 10 dB below is not noticed (from the just noticeable change, textbooks, from memory); +5 and +10 as a scale from BS 4142:2014.</remarks>
    public static Hearing Of(double overBackground, bool tonal = false) =>
        overBackground <= (tonal ? ToneNotNoticed : NotNoticed) ? Hearing.NotHeard
        : overBackground <= 0 ? Hearing.Faint
        : overBackground < Disturbs ? Hearing.Heard
        : overBackground < DisturbsMuch ? Hearing.Disturbing
        : Hearing.VeryDisturbing;

    /// <summary>How far below the background a sound may lie for the total to rise by so much.</summary>
    /// <param name="rise">The rise [dB]; above 0.</param>
    /// <returns>Signal - background [dB].</returns>
    /// <remarks>Source: 10 lg(1 + 10^(x/10)) solved for x.</remarks>
    public static double ForRise(double rise)
    {
        Require.Above0(rise, "dB");
        return 10 * Math.Log10(Levels.Energy(rise) - 1);
    }

    /// <summary>How much louder a change of level is felt.</summary>
    /// <param name="change">The change [dB].</param>
    /// <returns>Loudness ratio [1]: twice for 10 dB.</returns>
    /// <remarks>Source: Stevens, ISO 532, from memory: 2^(x/10).</remarks>
    public static double LoudnessRatio(double change) => Math.Pow(2, change / 10);

    /// <summary>From where on a tone stands out of the noise around it.</summary>
    /// <param name="hertz">Its frequency [Hz]; above 0.</param>
    /// <returns>Tone-to-noise ratio and prominence ratio from which it does [dB].</returns>
    /// <remarks>Source: Ecma-74 and ISO 7779, annex D (tone-to-noise from memory), Ecma-418-1 (prominence ratio).</remarks>
    public static (double ToneToNoise, double Prominence) ProminentFrom(double hertz)
    {
        Require.Above0(hertz, "Hz");
        var low = Math.Max(0, Math.Log10(1000 / hertz));
        return (8 + 8.33 * low, 9 + 10 * low);
    }

    /// <summary>Says whether a third octave is a tone among its neighbours.</summary>
    /// <param name="hertz">Its frequency [Hz].</param>
    /// <param name="overBoth">How far it stands above both neighbours [dB].</param>
    /// <returns>True when tonal.</returns>
    /// <remarks>Source: BS 4142 annex C and ISO 1996-2:2017 annex K, from memory: 15 dB up to 125 Hz, 8 up to 400, 5 above.</remarks>
    public static bool Tonal(double hertz, double overBoth) => overBoth >= (hertz < 142 ? 15 : hertz < 450 ? 8 : 5);

    /// <summary>What is added to a level for a tone in it.</summary>
    /// <param name="audibility">Mean audibility of the tone [dB].</param>
    /// <returns>The adjustment [dB], 0 to 6.</returns>
    /// <remarks>Source: DIN 45681, steps from memory.</remarks>
    public static int ToneAdjustment(double audibility) => audibility switch
    {
        <= 0 => 0,
        <= 2 => 1,
        <= 4 => 2,
        <= 6 => 3,
        <= 9 => 4,
        <= 12 => 5,
        _ => 6,
    };

    /// <summary>What a listener's own judgement of a tone adds.</summary>
    /// <param name="perceptible">0 not, 1 just, 2 clearly, 3 highly perceptible.</param>
    /// <returns>The penalty [dB].</returns>
    public static int TonePenalty(int perceptible)
    {
        // BS 4142:2014, subjective method, from memory.
        Require.Between(0, 3, perceptible);
        return 2 * perceptible;
    }
}

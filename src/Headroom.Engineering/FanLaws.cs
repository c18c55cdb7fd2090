namespace Headroom.Engineering;

/// <summary>How a fan's air and sound change with its speed, in one and the same path of air.</summary>
public static class FanLaws
{
    /// <summary>Decibels for ten times the speed, to predict a gain on the safe side.</summary>
    public const double ForGain = 50;

    /// <summary>The same as a best guess: electronics cooling, from memory.</summary>
    public const double BestGuess = 55;

    /// <summary>The same to predict a worsening: the force of the blades (dipole), from memory.</summary>
    public const double ForWorse = 60;

    /// <summary>Flow, pressure and shaft power at another speed.</summary>
    /// <param name="ratio">New speed / old speed [1]; above 0.</param>
    /// <returns>What each is multiplied with [1].</returns>
    /// <remarks>Source: affinity laws of fans: n, n², n³.</remarks>
    public static (double Flow, double Pressure, double Power) Affinity(double ratio)
    {
        Require.Above0(ratio, "");
        return (ratio, ratio * ratio, ratio * ratio * ratio);
    }

    /// <summary>Change of level with speed.</summary>
    /// <param name="ratio">New speed / old speed [1]; above 0.</param>
    /// <param name="slope">Decibels for ten times the speed [dB].</param>
    /// <returns>The change [dB]; below a third of full speed the bearings take over and it is less.</returns>
    /// <remarks>Source: fan sound law, K lg(n2/n1); 50 found in trade pages, 55 and 60 from memory.</remarks>
    public static double LevelChange(double ratio, double slope = ForGain)
    {
        Require.Above0(ratio, "");
        return slope * Math.Log10(ratio);
    }

    /// <summary>Speed ratio behind a change of level.</summary>
    /// <param name="change">The change [dB].</param>
    /// <param name="slope">Decibels for ten times the speed [dB].</param>
    /// <returns>New speed / old speed [1].</returns>
    /// <remarks>Source: the same, solved for the ratio.</remarks>
    public static double SpeedRatio(double change, double slope = ForGain) => Math.Pow(10, change / slope);

    /// <summary>The tone with which blades pass.</summary>
    /// <param name="blades">How many blades.</param>
    /// <param name="speed">The speed [1/min].</param>
    /// <returns>The frequency [Hz].</returns>
    /// <remarks>Source: B n / 60, any text on air movers.</remarks>
    public static double BladeTone(int blades, double speed) => blades * speed / 60;

    /// <summary>How often two tones swell and fade.</summary>
    /// <param name="first">The first tone [Hz].</param>
    /// <param name="second">The second [Hz].</param>
    /// <returns>The beat [Hz].</returns>
    /// <remarks>Source: sum of two sines.</remarks>
    public static double Beat(double first, double second) => Math.Abs(first - second);

    /// <summary>Pulses of a tachometer wire.</summary>
    /// <param name="speed">The speed [1/min].</param>
    /// <param name="pulses">Pulses a turn.</param>
    /// <returns>The frequency [Hz].</returns>
    /// <remarks>Source: n = 60 f / pulses; 2 a turn is usual.</remarks>
    public static double Tachometer(double speed, int pulses = 2) => speed * pulses / 60;
}

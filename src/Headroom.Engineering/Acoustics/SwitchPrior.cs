namespace Headroom.Engineering.Acoustics;

/// <summary>What is believed of a switch's sound before anybody has measured or declared anything: by its fans alone. Used as a check on figures, never in their place.</summary>
public static class SwitchPrior
{
    /// <summary>Grille, back pressure, casing and the inlet side [dB]: invented from trade figures, common practice, no source.</summary>
    public const double Installed = 6;

    /// <summary>Standard uncertainty of the prior [dB]: the same.</summary>
    public const double Uncertainty = 6;

    /// <summary>Between a bare fan's level at 1 m, free-hung, and its sound power level [dB]: full sphere.</summary>
    private const double Sphere = 11;

    /// <summary>Sound power level of a device by its fans.</summary>
    /// <param name="fan">Level of one bare fan at 1 m [dB(A)] and the speed at which it has it [1/min].</param>
    /// <param name="speed">The speed it runs at [1/min]; above 0.</param>
    /// <param name="fans">How many there are; 0 for none.</param>
    /// <returns>The level [dB(A)]; null for a device without fans, of which no number can be said.</returns>
    /// <remarks>Source: invented from trade figures; L + 11 + 50 lg(n/n0) + 10 lg N + 6.</remarks>
    public static double? Power((double LevelAt1Metre, double Speed) fan, double speed, int fans) => fans == 0
        ? null
        : fan.LevelAt1Metre + Sphere + FanLaws.LevelChange(speed / fan.Speed) + 10 * Math.Log10(fans) + Installed;
}

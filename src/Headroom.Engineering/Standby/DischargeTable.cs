namespace Headroom.Engineering.Standby;

/// <summary>How long a battery holds a constant power, between the rows of a table; beyond its ends it says nothing.</summary>
public sealed class DischargeTable
{
    private readonly double[] _seconds;
    private readonly double[] _watts;

    /// <summary>Makes a table.</summary>
    /// <param name="seconds">The times, rising [s]; two or more, each above 0.</param>
    /// <param name="watts">The power held for each, falling [W]; as many, each above 0.</param>
    /// <exception cref="ArgumentException">There are fewer than two rows, or the times do not rise while the power falls.</exception>
    public DischargeTable(double[] seconds, double[] watts)
    {
        if (seconds.Length < 2 || seconds.Length != watts.Length)
            throw new ArgumentException($"there are {seconds.Length} times and {watts.Length} powers; a table needs two rows or more, a power for each time.", nameof(seconds));
        for (var i = 0; i < seconds.Length; i++)
        {
            Require.Above0(seconds[i], "s", nameof(seconds));
            Require.Above0(watts[i], "W", nameof(watts));
            if (i > 0 && (seconds[i] <= seconds[i - 1] || watts[i] >= watts[i - 1]))
                throw new ArgumentException(FormattableString.Invariant($"row {i + 1} of the discharge table is {watts[i]} W for {seconds[i]} s after {watts[i - 1]} W for {seconds[i - 1]} s; times must rise while the power falls. See whether two rows are swapped."), nameof(seconds));
        }

        (_seconds, _watts) = (seconds, watts);
    }

    /// <summary>The most power the table goes up to [W].</summary>
    public double MostWatts => _watts[0];

    /// <summary>The least power the table goes down to [W].</summary>
    public double LeastWatts => _watts[^1];

    /// <summary>The shortest time in it [s].</summary>
    public double ShortestSeconds => _seconds[0];

    /// <summary>The longest time in it [s].</summary>
    public double LongestSeconds => _seconds[^1];

    /// <summary>How long a constant power is held.</summary>
    /// <param name="watts">The power [W]; above 0.</param>
    /// <returns>The time [s]; null outside the table.</returns>
    /// <remarks>Source: straight lines between rows in log-log, as constant-power tables of lead batteries are read; common practice, no source.</remarks>
    public double? Seconds(double watts)
    {
        Require.Above0(watts, "W");
        return watts > MostWatts || watts < LeastWatts ? null : Between(watts, _watts, _seconds);
    }

    /// <summary>How long a constant power is held at least: below the table its longest time.</summary>
    /// <param name="watts">The power [W]; 0 or more.</param>
    /// <returns>The time [s]; null above the table.</returns>
    /// <remarks>Source: less power never shortens a discharge.</remarks>
    public double? AtLeastSeconds(double watts)
    {
        Require.AtLeast(0, watts, "W");
        return watts < LeastWatts ? LongestSeconds : Seconds(watts);
    }

    /// <summary>The power that is held for a time.</summary>
    /// <param name="seconds">The time [s]; above 0.</param>
    /// <returns>The power [W]; null outside the table.</returns>
    /// <remarks>Source: as for <see cref="Seconds"/>.</remarks>
    public double? Watts(double seconds)
    {
        Require.Above0(seconds, "s");
        return seconds < ShortestSeconds || seconds > LongestSeconds ? null : Between(seconds, _seconds, _watts);
    }

    /// <summary>The power of one row scaled: blocks of another capacity, or the whole string.</summary>
    /// <param name="factor">What every power is multiplied by [1]; above 0.</param>
    /// <returns>The table of the same times.</returns>
    /// <remarks>Source: energy by capacity; ± 10 % between blocks of two makers, more at 5 to 15 min.</remarks>
    public DischargeTable Times(double factor)
    {
        Require.Above0(factor, "as a factor");
        return new(_seconds, Array.ConvertAll(_watts, watts => watts * factor));
    }

    private static double Between(double at, double[] from, double[] to)
    {
        var high = 1;
        var rising = from[^1] > from[0];
        while (high < from.Length - 1 && (rising ? at > from[high] : at < from[high]))
            high++;
        var share = Math.Log(at / from[high - 1]) / Math.Log(from[high] / from[high - 1]);
        return to[high - 1] * Math.Pow(to[high] / to[high - 1], share);
    }
}

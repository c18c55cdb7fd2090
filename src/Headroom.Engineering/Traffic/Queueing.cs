namespace Headroom.Engineering.Traffic;

/// <summary>How long frames wait before a full line: why seven tenths of it are the practical ceiling. In times of one frame.</summary>
public static class Queueing
{
    /// <summary>Mean wait before the line when frames come at random and are of random length [frame times].</summary>
    /// <param name="load">Mean share of the line in use [1]; 0 or more, below 1.</param>
    /// <returns>Frame times.</returns>
    /// <remarks>Source: M/M/1, ρ / (1 − ρ); Kleinrock, Queueing Systems, from memory. Real traffic is burstier.</remarks>
    public static double WaitOfRandom(double load) => Below1(load) / (1 - load);

    /// <summary>Mean wait before the line when frames come at random and are all alike [frame times].</summary>
    /// <param name="load">Mean share of the line in use [1]; 0 or more, below 1.</param>
    /// <returns>Frame times.</returns>
    /// <remarks>Source: M/D/1, ρ / (2 (1 − ρ)); Kleinrock, Queueing Systems, from memory.</remarks>
    public static double WaitOfAlike(double load) => Below1(load) / (2 * (1 - load));

    /// <summary>Mean time from arrival to the end of the frame, random lengths [frame times].</summary>
    /// <param name="load">Mean share of the line in use [1]; 0 or more, below 1.</param>
    /// <returns>Frame times.</returns>
    /// <remarks>Source: M/M/1, 1 / (1 − ρ); Kleinrock, Queueing Systems, from memory.</remarks>
    public static double StayOfRandom(double load) => 1 / (1 - Below1(load));

    /// <summary>The time that a share of the frames stays below, random lengths [frame times].</summary>
    /// <param name="load">Mean share of the line in use [1]; 0 or more, below 1.</param>
    /// <param name="share">The share of the frames [1]; above 0, below 1.</param>
    /// <returns>Frame times.</returns>
    /// <remarks>Source: M/M/1, −ln(1 − p) / (1 − ρ); Kleinrock, Queueing Systems, from memory.</remarks>
    public static double StayQuantile(double load, double share) => -Math.Log(1 - Below1(share)) / (1 - Below1(load));

    private static double Below1(double value) => value is >= 0 and < 1 ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, FormattableString.Invariant($"{value} is no share of 0 or more and below 1."));
}

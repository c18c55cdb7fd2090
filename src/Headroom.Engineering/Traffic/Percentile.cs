namespace Headroom.Engineering.Traffic;

/// <summary>The value that a share of readings does not exceed. There are several rules; the nearest rank is the one that bills use.</summary>
public static class Percentile
{
    /// <summary>The rank, from 1, of the reading that a share of them does not exceed.</summary>
    /// <param name="count">Readings; 1 or more.</param>
    /// <param name="share">The share [1]; above 0, at most 1.</param>
    /// <returns>The rank in ascending order.</returns>
    /// <remarks>Source: nearest rank, ⌈p n⌉, from memory.</remarks>
    public static int Rank(int count, double share)
    {
        Require.Between(1, int.MaxValue, count);
        Require.Share(share);
        // A share such as 0.95 is a hair too large in binary.
        return Math.Max(1, (int)Math.Ceiling(share * count - 1e-9 * count));
    }

    /// <summary>The reading of the nearest rank [unit of the readings].</summary>
    /// <param name="ascending">Readings in ascending order [any unit]; one or more.</param>
    /// <param name="share">The share [1]; above 0, at most 1.</param>
    /// <returns>The reading.</returns>
    /// <remarks>Source: nearest rank, as <see cref="Rank"/>.</remarks>
    public static double Nearest(IReadOnlyList<double> ascending, double share) => ascending[Rank(ascending.Count, share) - 1];

    /// <summary>The value between readings by the rule of spreadsheets [unit of the readings].</summary>
    /// <param name="ascending">Readings in ascending order [any unit]; one or more.</param>
    /// <param name="share">The share [1]; above 0, at most 1.</param>
    /// <returns>The value.</returns>
    /// <remarks>Source: linear between ranks 1 + p (n − 1), from memory.</remarks>
    public static double Linear(IReadOnlyList<double> ascending, double share) => At(ascending, 1 + Checked(share) * (ascending.Count - 1));

    /// <summary>The value between readings by the rule of Weibull [unit of the readings].</summary>
    /// <param name="ascending">Readings in ascending order [any unit]; one or more.</param>
    /// <param name="share">The share [1]; above 0, at most 1.</param>
    /// <returns>The value.</returns>
    /// <remarks>Source: linear between ranks p (n + 1), from memory.</remarks>
    public static double Weibull(IReadOnlyList<double> ascending, double share) => At(ascending, Checked(share) * (ascending.Count + 1));

    private static double Checked(double share)
    {
        Require.Share(share);
        return share;
    }

    private static double At(IReadOnlyList<double> ascending, double rank)
    {
        var held = Math.Clamp(rank, 1, ascending.Count);
        var below = (int)Math.Floor(held);
        var above = Math.Min(below + 1, ascending.Count);
        return ascending[below - 1] + (held - below) * (ascending[above - 1] - ascending[below - 1]);
    }
}

namespace Headroom.Engineering.Traffic;

/// <summary>How many calls go at once, and how often one more finds no way: Erlang B for many sources, Engset for few.</summary>
public static class Trunks
{
    /// <summary>No site of this size has more lines than this.</summary>
    public const int MostLines = 10_000;

    /// <summary>Share of calls that find all lines taken, from many sources [1].</summary>
    /// <param name="erlangs">Offered traffic [E]; 0 or more.</param>
    /// <param name="lines">Lines; 0 or more.</param>
    /// <returns>The share, 0 to 1.</returns>
    /// <remarks>Source: Erlang B by recursion, E(n) = A E(n−1) / (n + A E(n−1)); Iversen, Teletraffic Engineering Handbook, from memory.</remarks>
    public static double Blocking(double erlangs, int lines)
    {
        Require.AtLeast(0, erlangs, "E");
        Require.Between(0, MostLines, lines);
        var blocking = 1.0;
        for (var line = 1; line <= lines; line++)
            blocking = erlangs * blocking / (line + erlangs * blocking);
        return blocking;
    }

    /// <summary>Traffic that a number of lines carries with a share of calls lost [E].</summary>
    /// <param name="lines">Lines; 1 or more.</param>
    /// <param name="blocking">Share of calls that may be lost [1]; above 0 and below 1.</param>
    /// <returns>Offered traffic [E].</returns>
    /// <remarks>Source: Erlang B turned round by halving, as <see cref="Blocking"/>.</remarks>
    public static double Erlangs(int lines, double blocking)
    {
        Require.Between(1, MostLines, lines);
        Below1(blocking);
        var (least, most) = (0.0, 1.0);
        while (Blocking(most, lines) < blocking)
            most *= 2;
        for (var step = 0; step < 200 && most - least > 1e-12 * most; step++)
        {
            var middle = (least + most) / 2;
            (least, most) = Blocking(middle, lines) < blocking ? (middle, most) : (least, middle);
        }

        return (least + most) / 2;
    }

    /// <summary>Share of the time in which all lines are taken, from few sources [1].</summary>
    /// <param name="sources">Sources, such as telephones; 1 or more.</param>
    /// <param name="busyShare">Share of the busy hour that a source would be on the line [1]; 0 or more, below 1.</param>
    /// <param name="lines">Lines; 0 or more.</param>
    /// <returns>The share, 0 to 1; 0 with as many lines as sources or more, except that lines and sources are equal when none is ever free.</returns>
    /// <remarks>Source: Engset, E = C(S, N) α^N / Σ C(S, i) α^i with α = a / (1 − a); Iversen, from memory.</remarks>
    public static double TimeCongestion(int sources, double busyShare, int lines)
    {
        Require.Between(0, MostLines, sources);
        Require.Between(0, MostLines, lines);
        if (!(busyShare >= 0 && busyShare < 1))
            throw new ArgumentOutOfRangeException(nameof(busyShare), busyShare, FormattableString.Invariant($"busyShare is {busyShare}; it must be a share of 0 or more and below 1."));
        if (lines > sources)
            return 0;
        var alpha = busyShare / (1 - busyShare);
        var congestion = 1.0;
        for (var line = 1; line <= lines; line++)
        {
            var reach = (sources - line + 1) * alpha * congestion;
            congestion = reach / (line + reach);
        }

        return congestion;
    }

    /// <summary>Share of calls that find all lines taken, from few sources [1].</summary>
    /// <param name="sources">Sources, such as telephones; 1 or more.</param>
    /// <param name="busyShare">Share of the busy hour that a source would be on the line [1]; 0 or more, below 1.</param>
    /// <param name="lines">Lines; 0 or more.</param>
    /// <returns>The share, 0 to 1.</returns>
    /// <remarks>Source: Engset: a source finds the state that the others make, so the time congestion of one source fewer.</remarks>
    public static double CallCongestion(int sources, double busyShare, int lines)
    {
        Require.Between(1, MostLines, sources);
        return lines >= sources ? 0 : TimeCongestion(sources - 1, busyShare, lines);
    }

    /// <summary>The fewest lines on which no more than a share of calls is lost, from few sources.</summary>
    /// <param name="sources">Sources; 0 or more.</param>
    /// <param name="busyShare">Share of the busy hour that a source would be on the line [1]; 0 or more, below 1.</param>
    /// <param name="blocking">Share of calls that may be lost [1]; above 0 and below 1.</param>
    /// <returns>Lines, never more than sources.</returns>
    /// <remarks>Source: Engset, as <see cref="CallCongestion"/>; with many sources it goes over into Erlang B.</remarks>
    public static int LinesFor(int sources, double busyShare, double blocking)
    {
        Require.Between(0, MostLines, sources);
        Below1(blocking);
        if (sources == 0)
            return 0;
        var lines = 0;
        while (lines < sources && CallCongestion(sources, busyShare, lines) > blocking)
            lines++;
        return lines;
    }

    /// <summary>The fewest lines on which no more than a share of calls is lost, from many sources.</summary>
    /// <param name="erlangs">Offered traffic [E]; 0 or more, at most 5000.</param>
    /// <param name="blocking">Share of calls that may be lost [1]; above 0 and below 1.</param>
    /// <returns>Lines.</returns>
    /// <remarks>Source: Erlang B, as <see cref="Blocking"/>.</remarks>
    public static int LinesFor(double erlangs, double blocking)
    {
        Require.AtLeast(0, erlangs, "E");
        Below1(blocking);
        var (lines, lost) = (0, 1.0);
        while (lost > blocking && lines < MostLines)
        {
            lines++;
            lost = erlangs * lost / (lines + erlangs * lost);
        }

        return lines;
    }

    private static void Below1(double blocking)
    {
        if (!(blocking > 0 && blocking < 1))
            throw new ArgumentOutOfRangeException(nameof(blocking), blocking, FormattableString.Invariant($"blocking is {blocking}; it must be a share above 0 and below 1."));
    }
}

namespace Headroom.Engineering.Cabling;

/// <summary>How many boxes of cable are opened for a number of runs.</summary>
public static class CableBoxes
{
    /// <summary>Cable in a box [m]: 1000 ft. Source: common practice, no source.</summary>
    public const double BoxMetres = 304.8;

    /// <summary>What is bought beyond the measured lengths where no house rule says [1]. Source: common practice, no source.</summary>
    public const double UsualWaste = 0.10;

    /// <summary>Boxes needed when no run is joined from two remainders.</summary>
    /// <param name="runs">Lengths to be cut [m]; each 0 or more, waste included.</param>
    /// <param name="boxMetres">Cable in a box [m]; above 0.</param>
    /// <returns>How many. A run longer than a box takes whole reels for itself.</returns>
    /// <remarks>Source: first fit, longest first: at most a few boxes above the least there can be.</remarks>
    public static int Needed(IEnumerable<double> runs, double boxMetres = BoxMetres)
    {
        Require.Above0(boxMetres, "m");
        var left = new List<double>();
        var whole = 0;
        foreach (var run in runs.OrderDescending())
        {
            Require.AtLeast(0, run, "m");
            if (run > boxMetres)
            {
                whole += (int)Math.Ceiling(run / boxMetres - 1e-9);
                continue;
            }

            var box = left.FindIndex(metres => run <= metres + 1e-9);
            if (box >= 0)
                left[box] -= run;
            else if (run > 0)
                left.Add(boxMetres - run);
        }

        return whole + left.Count;
    }
}

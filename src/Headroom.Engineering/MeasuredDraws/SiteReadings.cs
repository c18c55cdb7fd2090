namespace Headroom.Engineering.MeasuredDraws;

/// <summary>What was read of one model in one mode at one site.</summary>
/// <param name="Site">The site.</param>
/// <param name="Watts">The readings at ports [W]; one at least.</param>
public sealed record SiteReadings(string Site, IReadOnlyList<double> Watts)
{
    /// <summary>Their mean [W].</summary>
    public double MeanWatts => Watts.Average();

    /// <summary>Sum of the squares of what each differs from their mean [W²].</summary>
    public double SquaresAround
    {
        get
        {
            var mean = MeanWatts;
            return Watts.Sum(watts => (watts - mean) * (watts - mean));
        }
    }
}

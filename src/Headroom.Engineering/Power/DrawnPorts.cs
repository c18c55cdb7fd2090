using Headroom.Domain.Ledgers;
using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Power;

/// <summary>The ports of one switch whose devices were read in one state, here or elsewhere.</summary>
/// <param name="Total">What they draw together at a new site.</param>
/// <param name="MeanWatts">The sum of the means of their models [W].</param>
public sealed record DrawnPorts(DrawTotal Total, double MeanWatts)
{
    // The most that any port of the standard gives, for ports that grant nothing by themselves (IEEE 802.3, class 8).
    private const double MostPortWatts = 90;

    /// <summary>What is set aside on top of the means, so that all but one of a hundred new sites keep to it [W].</summary>
    public double OverMeansWatts => Total.Watts - MeanWatts;

    /// <summary>How many devices.</summary>
    public int Units => Total.Groups.Sum(group => group.Units);

    /// <summary>Where the readings come from, and whether they decide.</summary>
    public string Note
    {
        get
        {
            var sites = $"readings of {Words.List([.. Total.Groups.Select(group => $"{group.Fitted.Model} from {Words.Count(group.Fitted.Sites.Count, "site")}")])}";
            return Total.IsPriorDriven ? $"{sites}; below {FittedDraw.EnoughSites} sites it is prior-driven: the catalogue decides more than the readings" : sites;
        }
    }

    /// <summary>Gathers the ports whose devices were read.</summary>
    /// <param name="ports">The ports of the switch.</param>
    /// <param name="measured">What was read.</param>
    /// <param name="state">The state.</param>
    /// <returns>The ports; a total without groups when none was read.</returns>
    public static DrawnPorts Of(IReadOnlyList<PoweredPort> ports, MeasuredDrawResult measured, PowerState state)
    {
        var groups = new List<DrawGroup>();
        var means = 0.0;
        foreach (var group in ports.Select(port => (Port: port, Fitted: measured.Of(port.Endpoint, DeviceDraws.Name(state)))).Where(one => one.Fitted is not null).GroupBy(one => one.Fitted!))
        {
            groups.Add(new(group.Key, group.Count(), group.Sum(one => one.Port.GrantWatts ?? MostPortWatts)));
            means += group.Sum(one => Mean(one.Port, group.Key));
        }

        return new(groups.Count == 0 ? new DrawTotal([], 0) : DrawTotal.Of(groups), means);
    }

    /// <summary>The mean draw of a device that was read.</summary>
    /// <param name="port">Its port.</param>
    /// <param name="measured">What was read.</param>
    /// <param name="state">The state.</param>
    /// <returns>The mean, no more than the port grants [W]; null when its model was not read in that state.</returns>
    public static double? MeanOf(PoweredPort port, MeasuredDrawResult measured, PowerState state) =>
        measured.Of(port.Endpoint, DeviceDraws.Name(state)) is { } fitted ? Mean(port, fitted) : null;

    /// <summary>The steps of the working.</summary>
    internal IEnumerable<WorkingStep> Steps()
    {
        foreach (var group in Total.Groups)
        {
            var fitted = group.Fitted;
            yield return new($"{fitted.Model}, {fitted.Mode}, read", $"{Words.Count(fitted.Readings, "reading")} from {Words.Count(fitted.Sites.Count, "site")}; beforehand {Words.Of(DrawPrior.MeanShare)} of {Words.Of(fitted.NameplateWatts, "W")}; units differ by {Words.Of(fitted.UnitWatts, "W")}; mean of a new site", fitted.Draw.MeanWatts, "W");
        }

        yield return new("on top of the means", "so that all but one of a hundred new sites keep to it", OverMeansWatts, "W");
    }

    private static double Mean(PoweredPort port, FittedDraw fitted) => Math.Min(fitted.Draw.MeanWatts, port.GrantWatts ?? MostPortWatts);
}

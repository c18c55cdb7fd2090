using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Applies the rules of the cabling standards to a bound design.</summary>
public static class CablingStudy
{
    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="loadOf">What a drop carries, as the study of power found it; null for nothing or not known.</param>
    /// <returns>The result; entries are made from it by <see cref="CablingLedger"/>.</returns>
    public static CablingResult Of(BoundDesign bound, Func<string, CableLoad?> loadOf)
    {
        var links = new FibreSums(bound).Find();
        var light = new HashSet<string>();
        foreach (var link in links)
        {
            if (!link.IsCopper && link.Run is { } run)
                light.Add(run.Drop.Id);
        }

        var copper = new List<BoundRun>(bound.Runs.Count);
        foreach (var run in bound.Runs)
        {
            if (!run.IsFibre && !light.Contains(run.Drop.Id))
                copper.Add(run);
        }

        return new CablingResult(
            bound, Shares.Map(copper, RunSums.Of), PairReadings.ByDrop(bound.Job.Readings), links, PathwaySums.Of(bound), new BundleFinder(loadOf).Find(bound.Runs));
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>Finds the smallest set of requirements that clash: each is given up in turn, and stays out when there is still no design.</summary>
internal sealed class ClashFinder(Job job, Catalogue catalogue, PlanRequest request)
{
    /// <summary>The requirements, with what giving up each would cost.</summary>
    public List<PlanClash> Find(PlanWork failed)
    {
        var needed = Requirement.All(job, request).ToList();
        var unserved = failed.Packing.Unserved().ToList();
        // Where no switch may be bought at all it is a requirement that bars them, and not the kinds.
        if (unserved.Count > 0 && (failed.Packing.Purchases.Count > 0 || Total(needed) is null))
            return [.. unserved.Select(at => new PlanClash($"{at.Kind.Id} is to be served", $"nothing in the catalogue serves it{(at.Entry is { } entry ? $": its {entry} are not kept on any port, nor behind any injector" : "")}", null))];
        var kept = needed.ToList();
        foreach (var one in needed)
        {
            var without = kept.Where(other => other != one).ToList();
            if (Total(needed.Except(without)) is null)
                kept = without;
        }

        // What is out of the set clashes with nothing in it, but may with something else: it is given up too only where one alone does not do.
        var given = needed.Except(kept).ToList();
        return [.. kept.Select(one => Clash(one, [.. given, one]))];
    }

    private PlanClash Clash(Requirement one, IReadOnlyList<Requirement> without)
    {
        var total = Total([one]) ?? Total(without);
        return new(one.Words, total is { } cost ? $"{one.Relaxed}; the cheapest then costs {PlanWords.Of(cost)}" : one.Relaxed, total);
    }

    private decimal? Total(IEnumerable<Requirement> without)
    {
        var (at, asked) = (job, request with { OnlyCheapest = true });
        foreach (var one in without)
            (at, asked) = one.Without(at, asked);
        if (PinCheck.Of(at, catalogue, asked).Count > 0)
            return null;
        var work = new PlanWork(at with { Readings = [], Overrulings = [] }, catalogue, asked);
        return work.Look() ? work.Search.Found.Min(found => found.Cost.Total) : null;
    }
}

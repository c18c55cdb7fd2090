using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>Tells what makes each of the designs lose that somebody may ask about: cheaper ones, the next dearer, the single box, those of the job.</summary>
internal sealed class Losers(PlanWork work, Job job, IReadOnlyList<Candidate> byCost)
{
    /// <summary>All of them.</summary>
    public List<RefusedSet> All()
    {
        var cheapest = byCost[0].Cost.Total;
        // Of what was tried with other cords in the same boxes the last says why.
        var cheaper = work.Search.Refused.Where(refused => refused.Total is null || refused.Total < cheapest).GroupBy(refused => (refused.Bought, refused.Total)).Select(same => same.Last() with { Why = "cheaper" });
        var dearer = byCost.Skip(1).Take(3).Select(found => new RefusedSet("dearer", found.Bought, found.Cost.Total, null, $"costs {PlanWords.Of(found.Cost.Total - cheapest)} {found.Cost.Currency} more"));
        List<RefusedSet> all = [.. cheaper, .. dearer];
        if (!work.Request.OnlyCheapest)
            all.AddRange([.. SingleBox(cheapest), .. OfTheJob(cheapest)]);
        return [.. all, .. work.Refused.Where(refused => refused.Why == "not considered")];
    }

    private IEnumerable<RefusedSet> SingleBox(decimal cheapest)
    {
        if (byCost[0].Design.Switches.Count == 1 || work.Search is SplitSearch)
            yield break;
        var search = new Search(work.Packing, work.Gate, work.Request, boxes: 1);
        search.Run(cost => cost, 8, 60);
        if (search.Found.MinBy(found => found.Cost.Total) is { } single)
            yield return new("single box", single.Bought, single.Cost.Total, null, $"costs {PlanWords.Of(single.Cost.Total - cheapest)} {single.Cost.Currency} more");
        else if ((search.Refused.Find(refused => refused.Entry is not null) ?? search.Refused.FirstOrDefault()) is { } refused)
            yield return refused with { Why = "single box" };
    }

    private IEnumerable<RefusedSet> OfTheJob(decimal cheapest)
    {
        foreach (var design in job.Designs)
        {
            if (DesignLineage.Whole(job, design.Id) is not { } whole)
                continue;
            var cost = DesignCost.Of(whole, work.Catalogue, work.Packing.Prices, work.Request.Pins.Owned);
            var broken = work.Gate.NotKept(work.Gate.Study(whole));
            var bought = $"{design.Id}: {DesignCost.Bought(whole, work.Catalogue)}";
            if (broken is [var worst, ..])
                yield return new("of the job", bought, cost?.Total, worst.Id, PlanWords.Of(worst));
            else if (Short(whole) is { } room)
                yield return new("of the job", bought, cost?.Total, null, room);
            else
                yield return new("of the job", bought, cost?.Total, null, cost is null ? "its price is not known" : cost.Total > cheapest ? $"costs {PlanWords.Of(cost.Total - cheapest)} {cost.Currency} more" : "costs no more");
        }
    }

    // What is to be added has no verdict in the ledger: the plan asks for it all the same.
    private string? Short(Design design)
    {
        var more = work.Packing.Kinds.Where(kind => kind.IsGrowth).Sum(kind => kind.Count);
        var copper = design.Switches.Sum(unit => work.Catalogue.Switches[unit.Model!].Ports.Where(group => group.Media == "copper").Sum(group => group.Last - group.First + 1));
        var links = (design.Uplinks ?? []).SelectMany(uplink => new[] { uplink.From, uplink.To }).Count(end => IsCopper(design, end));
        var free = copper - links - work.Job.Survey.Endpoints.Count;
        return free >= more ? null : $"of its copper ports {Math.Max(0, free)} stay free, and growth wants {more}";
    }

    private bool IsCopper(Design design, PortRef end) => design.Switches.FirstOrDefault(unit => unit.Id == end.Unit) is { } unit
        && work.Catalogue.Switches[unit.Model!].Ports.Any(group => group.Media == "copper" && end.Port >= group.First && end.Port <= group.Last);
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Engineering;

namespace Headroom.Planning.Jobs;

/// <summary>Chooses from what was found the designs that a client can choose between, and tells why the rest lost.</summary>
internal sealed class Offer(PlanWork work, Job job)
{
    private readonly List<(string Role, Candidate Candidate, PlanProof Proof)> _roles = [];

    private IReadOnlyList<Candidate> ByCost => field ??= [.. work.Search.Found.OrderBy(found => found.Cost.Total).ThenBy(found => found.Bought, StringComparer.Ordinal)];

    private Design? Today => field ??= Study.DesignOf(job, work.Request.Today);

    /// <summary>The plan.</summary>
    public Plan Plan()
    {
        Choose();
        var proposals = _roles.GroupBy(role => role.Candidate).Select(Proposal).ToList();
        var refused = new Losers(work, job, ByCost).All();
        return new Plan(job.Name, work.Request.On, proposals, refused, Front())
        {
            Assumed = [.. work.Assumed, .. Growth(), .. LinksTaken()],
            Studied = work.Gate.Count,
            MayDiffer = work.Request.Effort.Stop.IsCancellationRequested,
        };
    }

    private void Choose()
    {
        var cheapest = ByCost[0];
        _roles.Add(("cheapest", cheapest, new("no design that keeps every reserve costs less", Gap(cheapest))));
        if (work.Request.OnlyCheapest)
            return;
        var near = ByCost.Where(found => found.Cost.Total <= cheapest.Cost.Total * (1 + (decimal)PlanWork.Dearer)).ToList();
        var all = WholeRange(cheapest);
        PlanProof Of(string by) => new($"{by} of {near.Count} designs within 15 % of the cheapest{(all ? ", which are all without a unit to spare" : "; there may be more")}", all ? 0 : null);
        if (near.Any(found => found.Loudest is not null))
            _roles.Add(("quietest", near.OrderBy(found => found.Loudest ?? double.MaxValue).First(), Of("the quietest")));
        _roles.Add(("most room to grow", near.OrderByDescending(found => new RoomLeft(work.Packing, found).Powered).ThenByDescending(found => new RoomLeft(work.Packing, found).Ports).First(), Of("the roomiest")));
        _roles.Add(("fewest boxes", Fewest(out var proof), proof));
        if (OnceAnswered(cheapest) is { } asks)
            _roles.Add(("cheaper once answered", asks, new("not all that its limits hang on is known", null)));
        if (Today is { } today)
            _roles.Add(("closest to today", near.OrderBy(found => TodayDistance.Of(found.Design, today)).First(), Of("the closest")));
    }

    // Looked for by themselves, whatever they cost.
    private Candidate Fewest(out PlanProof proof)
    {
        var known = ByCost.MinBy(found => found.Design.Switches.Count)!;
        var search = work.Fewest();
        var found = search.Found.MinBy(one => one.Design.Switches.Count);
        var least = found is not null && found.Design.Switches.Count <= known.Design.Switches.Count ? found : known;
        var proved = found is not null && !search.GaveUp && !work.Request.Effort.Stop.IsCancellationRequested;
        proof = proved ? new("the fewest switches", 0) : new("the fewest switches of those found", null);
        return ByCost.FirstOrDefault(one => one.Bought == least.Bought) ?? least;
    }

    // With units of which something is not known that a limit hangs on: shown with its questions, never as kept.
    private Candidate? OnceAnswered(Candidate cheapest)
    {
        if (work.NotKnown.Count == 0 || work.CarriesUnknown)
            return null;
        var other = work.WithUnknown();
        return other.Found.Where(found => found.Cost.Total < cheapest.Cost.Total).MinBy(found => found.Cost.Total);
    }

    private bool WholeRange(Candidate cheapest) =>
        !work.Search.GaveUp && (work.Search.Bound is not { } bound || bound >= UnitPrices.Coins(cheapest.Cost) * (1 + PlanWork.Dearer));

    private double? Gap(Candidate cheapest)
    {
        var cost = UnitPrices.Coins(cheapest.Cost);
        if (work.Search.GaveUp || work.Request.Effort.Stop.IsCancellationRequested)
            return work.Search.Bound is { } some && some < cost ? Above(some, cost) : null;
        return work.Search.Bound is not { } bound || bound >= cost ? 0 : Above(bound, cost);
    }

    // As a share of the least possible: where nothing is known of that, there is none.
    private static double? Above(long bound, long cost) => bound > 0 ? (cost - bound) / (double)bound : null;

    private Proposal Proposal(IGrouping<Candidate, (string Role, Candidate Candidate, PlanProof Proof)> roles)
    {
        var found = roles.Key;
        var packing = work.PackingOf(found);
        var room = new RoomLeft(packing, found);
        var names = roles.Select(role => role.Role).ToList();
        var design = found.Design with { Id = $"proposed-{names[0].Replace(' ', '-')}" };
        return new Proposal
        {
            Roles = names,
            Bought = found.Bought,
            Design = design,
            Ledger = found.Ledger with { Design = design.Id },
            Cost = found.Cost,
            Proof = roles.First().Proof,
            Units = found.Units,
            FreePorts = room.Ports,
            FreePowered = room.Powered,
            FreeWatts = room.Watts,
            Loudest = found.Loudest,
            Moved = Today is null ? null : TodayDistance.Moved(found.Design, Today),
            Settings = [.. SettingWords.Of(found, packing)],
            Binding = [.. found.Ledger.Entries.Where(IsOfUnits).OrderBy(Share).Take(3).Select(entry => entry.Id)],
        };

        bool IsOfUnits(LedgerEntry entry) => entry is { Limit: > 0, Left: not null, Verdict: Verdict.Clear } && found.Design.Switches.Any(unit => unit.Id == entry.Subject || entry.Subject.StartsWith("standby", StringComparison.Ordinal));
    }

    private static double Share(LedgerEntry entry) => (entry.Left!.Value - (entry.Reserve ?? 0)) / entry.Limit!.Value;

    // Of no other is it true that it is better in one thing and worse in none.
    private List<FrontPoint> Front()
    {
        var points = ByCost.Select(found => (Found: found, Room: new RoomLeft(work.Packing, found)))
            .Select(at => new FrontPoint(at.Found.Bought, at.Found.Cost.Total, at.Found.Loudest, at.Room.Ports, at.Room.Powered)).ToList();
        return [.. points.Where(point => !points.Exists(other => other != point && Beats(other, point)))];
    }

    private static bool Beats(FrontPoint one, FrontPoint other) =>
        one.Total <= other.Total && (one.Loudest ?? 0) <= (other.Loudest ?? 0) && one.FreePorts >= other.FreePorts && one.FreePowered >= other.FreePowered
        && (one.Total < other.Total || (one.Loudest ?? 0) < (other.Loudest ?? 0) || one.FreePorts > other.FreePorts || one.FreePowered > other.FreePowered);

    private IEnumerable<string> LinksTaken() => Enumerable.Range(0, work.Packing.Places.Count)
        .Where(place => work.Packing.Line.Ways[place] is { Module: null }).Select(place => $"no fibre is surveyed between {work.Packing.Places[place]} and {work.Packing.Places[work.Packing.Line.Root]}: copper taken");

    private IEnumerable<string> Growth() => work.Packing.Kinds.Where(kind => kind.IsGrowth).Select(kind =>
        kind.TakesPower ? $"{kind.Count} powered ports kept free for growth, with the watts of {kind.Model.Id}" : $"{kind.Count} more ports kept free for growth");
}

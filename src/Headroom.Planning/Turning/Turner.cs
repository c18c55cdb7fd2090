using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Planning.Jobs;

namespace Headroom.Planning.Turning;

/// <summary>Finds the value at which the cheapest design changes, by proving designs and halving the way, never by sampling.</summary>
internal sealed class Turner(Job job, Catalogue catalogue, PlanRequest request)
{
    // Where today's answer ends, what comes instead is looked for in so many sets; where none of them does, it says that this is not proved.
    private const int TriesBeyond = 60;

    private readonly PlanMemory _memory = new();
    private Candidate? _today;
    private bool _carries;
    private bool _carriesLast;

    /// <summary>The turning points up and down from today.</summary>
    public List<TurningPoint> Of(Knob knob)
    {
        var (at, models) = knob.Set(knob.Now);
        var (now, proved) = Cheapest(at, models, _memory);
        _carries = _carriesLast;
        return now is null ? [] : [Way(knob, knob.Most, now, proved), Way(knob, knob.Least, now, proved)];
    }

    /// <summary>What to turn when nobody says: the model that draws most in all, the kind there is most of, the dearest switch, each limit that people set.</summary>
    public IEnumerable<string> Usual()
    {
        var powered = job.Survey.Endpoints.GroupBy(endpoint => endpoint.Model).Where(group => catalogue.Endpoints[group.Key].Power is not null && catalogue.Endpoints[group.Key].Draws.Count > 0).ToList();
        if (powered.MaxBy(group => group.Count() * catalogue.Endpoints[group.Key].Draws.Values.Max(draw => draw.Value.Value)) is { } most)
            yield return $"draw:{most.Key}";
        if (powered.MaxBy(group => group.Count()) is { } many)
            yield return $"count:{many.Key}";
        _today ??= Cheapest(job, catalogue, _memory).Found;
        if (_today?.Design.Switches.MaxBy(unit => catalogue.Switches[unit.Model!].Body.Price?.Value.Amount ?? 0) is { } dearest)
            yield return $"price:{dearest.Model}";
        if (job.Survey.Listeners.FirstOrDefault(listener => listener.Limit is not null) is { } listener)
            yield return $"noise:{listener.Id}";
        if (job.Policy.Outage is { Runtime: not null, Keep.Count: > 0 })
            yield return "runtime";
        if (job.Policy.ReserveOf("power").Share is not null)
            yield return "reserve";
    }

    // The last value at which nothing changes and the first at which something does come nearer and nearer, until one step is between them.
    private TurningPoint Way(Knob knob, double end, Candidate now, bool proved)
    {
        var values = new SortedDictionary<double, TurnValue> { [knob.Now] = new(knob.Now, now.Bought, now.Cost.Total) };
        var (same, other) = (knob.Now, end);
        var turns = !Stays(knob, end, now, values, ref proved);
        while (turns && Math.Abs(other - same) > knob.Step * 1.01 && !request.Effort.Stop.IsCancellationRequested)
        {
            var middle = Math.Round((same + other) / 2 / knob.Step) * knob.Step;
            if (middle == same || middle == other)
                break;
            if (Stays(knob, middle, now, values, ref proved))
                same = middle;
            else
                other = middle;
        }

        var then = turns ? Then(knob, other, values, ref proved) : null;
        return new(
            knob.On, knob.What, knob.Unit, knob.Now, end > knob.Now, turns ? Math.Round(same, 4) : null, end, now.Bought, now.Cost.Total,
            then?.Bought, then?.Cost.Total, proved && !request.Effort.Stop.IsCancellationRequested, [.. values.Values]);
    }

    // Today's units with these very models first: where they no longer do, or do for less with others of them, the answer is known at once.
    private bool Stays(Knob knob, double value, Candidate now, SortedDictionary<double, TurnValue> values, ref bool proved)
    {
        var (at, models) = knob.Set(value);
        var memory = knob.KeepsUnits ? _memory : new PlanMemory();
        var own = now.Design.Switches.Select(unit => unit.Model!).Distinct().ToList();
        var few = Work(at, models with { Switches = models.Switches.Where(model => own.Contains(model.Key)).ToDictionary() }, memory);
        // Units with less behind their name than is known are the answer only where nothing else is: then all is looked at.
        var isKnown = !_carries;
        var found = isKnown ? few.LookUpTo(now.Design) : few.Look() ? few.Search.Found.MinBy(one => one.Cost.Total) : null;
        if (found?.Bought != now.Bought)
            return false;
        var (cheaper, sure) = !isKnown ? Cheapest(at, models, memory) : Work(at, models, memory).LookBelow(found!.Cost);
        proved &= sure;
        if (cheaper is not null && cheaper.Bought != now.Bought)
            return false;
        values[value] = new(Math.Round(value, 4), now.Bought, found!.Cost.Total);
        return true;
    }

    private Candidate? Then(Knob knob, double value, SortedDictionary<double, TurnValue> values, ref bool proved)
    {
        var (at, models) = knob.Set(value);
        var (found, sure) = Cheapest(at, models, knob.KeepsUnits ? _memory : new PlanMemory(), TriesBeyond);
        proved &= sure;
        values[value] = new(Math.Round(value, 4), found?.Bought, found?.Cost.Total);
        return found;
    }

    private PlanWork Work(Job at, Catalogue models, PlanMemory memory) =>
        new(at with { Readings = [], Overrulings = [] }, models, request with { OnlyCheapest = true }, memory);

    private (Candidate? Found, bool Proved) Cheapest(Job at, Catalogue models, PlanMemory memory, int tries = 400)
    {
        var work = Work(at, models, memory);
        // A design found at once is at least one that does, where the sets run out before the cheapest comes up.
        if (tries == TriesBeyond)
            work.LookFirst();
        if (!work.Look(tries))
            return (null, !request.Effort.Stop.IsCancellationRequested && !work.Search.GaveUp && work.Search.Bound is null);
        _carriesLast = work.CarriesUnknown;
        var found = work.Search.Found.MinBy(one => one.Cost.Total)!;
        return (found, !work.Search.GaveUp && (work.Search.Bound is not { } bound || bound >= UnitPrices.Coins(found.Cost)));
    }
}

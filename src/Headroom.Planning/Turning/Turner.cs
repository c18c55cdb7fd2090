using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Planning.Jobs;

namespace Headroom.Planning.Turning;

/// <summary>Finds the value at which the cheapest design changes, by proving designs and halving the way, never by sampling.</summary>
internal sealed class Turner(Job job, Catalogue catalogue, PlanRequest request)
{
    private readonly PlanMemory _memory = new();

    /// <summary>The turning points up and down from today.</summary>
    public List<TurningPoint> Of(Knob knob)
    {
        var values = new SortedDictionary<double, (Candidate? Found, bool Proved)>();
        var now = At(knob, knob.Now, values);
        return now is null ? [] : [Way(knob, knob.Most, now, values), Way(knob, knob.Least, now, values)];
    }

    /// <summary>What to turn when nobody says: the model that draws most in all, the kind there is most of, the dearest switch, each limit that people set.</summary>
    public IEnumerable<string> Usual()
    {
        var powered = job.Survey.Endpoints.GroupBy(endpoint => endpoint.Model).Where(group => catalogue.Endpoints[group.Key].Power is not null && catalogue.Endpoints[group.Key].Draws.Count > 0).ToList();
        if (powered.MaxBy(group => group.Count() * catalogue.Endpoints[group.Key].Draws.Values.Max(draw => draw.Value.Value)) is { } most)
            yield return $"draw:{most.Key}";
        if (powered.MaxBy(group => group.Count()) is { } many)
            yield return $"count:{many.Key}";
        if (Cheapest(job, catalogue, _memory) is { Found: { } found } && found.Design.Switches.MaxBy(unit => catalogue.Switches[unit.Model!].Body.Price?.Value.Amount ?? 0) is { } dearest)
            yield return $"price:{dearest.Model}";
        if (job.Survey.Listeners.FirstOrDefault(listener => listener.Limit is not null) is { } listener)
            yield return $"noise:{listener.Id}";
        if (job.Policy.Outage is { Runtime: not null, Keep.Count: > 0 })
            yield return "runtime";
        if (job.Policy.ReserveOf("power").Share is not null)
            yield return "reserve";
    }

    // The last value at which nothing changes and the first at which something does come nearer and nearer.
    private TurningPoint Way(Knob knob, double end, Candidate now, SortedDictionary<double, (Candidate? Found, bool Proved)> values)
    {
        var up = end > knob.Now;
        var last = At(knob, end, values);
        var (same, other) = (knob.Now, end);
        if (last?.Bought != now.Bought)
        {
            while (Math.Abs(other - same) > knob.Step * 1.01 && !request.Effort.Stop.IsCancellationRequested)
            {
                var middle = Math.Round((same + other) / 2 / knob.Step) * knob.Step;
                if (middle == same || middle == other)
                    break;
                if (At(knob, middle, values)?.Bought == now.Bought)
                    same = middle;
                else
                    (other, last) = (middle, values[middle].Found);
            }
        }

        var turns = last?.Bought != now.Bought;
        var points = values.Where(value => up ? value.Key >= knob.Now : value.Key <= knob.Now).ToList();
        return new(
            knob.On, knob.What, knob.Unit, knob.Now, up, turns ? Math.Round(same, 4) : null, end, now.Bought, now.Cost.Total,
            turns ? last?.Bought : null, turns ? last?.Cost.Total : null, points.TrueForAll(value => value.Value.Proved),
            [.. points.Select(value => new TurnValue(Math.Round(value.Key, 4), value.Value.Found?.Bought, value.Value.Found?.Cost.Total))]);
    }

    private Candidate? At(Knob knob, double value, SortedDictionary<double, (Candidate? Found, bool Proved)> values)
    {
        if (values.TryGetValue(value, out var known))
            return known.Found;
        var (at, models) = knob.Set(value);
        var worked = Cheapest(at, models, knob.KeepsUnits ? _memory : new PlanMemory());
        values[value] = worked;
        return worked.Found;
    }

    private (Candidate? Found, bool Proved) Cheapest(Job at, Catalogue models, PlanMemory memory)
    {
        var work = new PlanWork(at with { Readings = [], Overrulings = [] }, models, request with { OnlyCheapest = true }, memory);
        if (!work.Look())
            return (null, !request.Effort.Stop.IsCancellationRequested);
        var found = work.Search.Found.MinBy(one => one.Cost.Total)!;
        return (found, !work.Search.GaveUp && (work.Search.Bound is not { } bound || bound >= UnitPrices.Coins(found.Cost)));
    }
}

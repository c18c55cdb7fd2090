using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A midspan beside a switch that asks too much: it takes over neighbouring ports, so that two supplies share the load.</summary>
internal sealed class MidspanBeside : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry))
            yield break;
        foreach (var unit in at.SwitchesOf(entry))
        {
            var id = $"{unit.Id}-midspan";
            if (at.Design.Injectors.Any(injector => injector.Id == id))
                continue;
            foreach (var model in at.Catalogue.Injectors.Values.Where(model => model is { Ports: > 1, Poe: not null, Supply.Input: not "dc" }))
            {
                foreach (var run in Runs(unit, model.Ports, PoeTypes.Of(model.Poe!.Value).HighestClass, at))
                    yield return Idea(at, unit, (id, model.Id), run);
            }
        }
    }

    private static RemedyIdea Idea(RemedyCase at, BoundSwitch unit, (string Id, string Model) midspan, List<BoundEndpoint> run)
    {
        var injector = Delta.Injector(midspan.Id, midspan.Model) with
        {
            Standing = new(unit.Placed.Standing.In, null, null),
            FedBy = unit.Placed.FedBy,
            From = [.. run.Select(endpoint => new PortRef(unit.Id, endpoint.Port!.Port))],
        };
        var patch = run.Select((endpoint, index) => new Patch(at.PatchOf(endpoint)!, new PortRef(midspan.Id, index + 1), Place.None));
        return new("midspan", $"{Words.List([.. run.Select(endpoint => endpoint.Id)], most: 12)}: fed from a midspan {midspan.Model} behind {unit.Id}", Delta.Of(at) with { Injectors = [injector], Patch = [.. patch] });
    }

    // Ports that follow one another, as many as the midspan has at most: the run that takes most, and the longest.
    private static IEnumerable<List<BoundEndpoint>> Runs(BoundSwitch unit, int most, int highest, RemedyCase at)
    {
        var ports = at.Power.Ports.Where(port => port.Port.Switch?.Id == unit.Id && port.AskedClass <= highest && at.PatchOf(port.Endpoint) is not null).OrderBy(port => port.Port.Port).ToList();
        var runs = new List<(double Watts, List<BoundEndpoint> Run)>();
        for (var first = 0; first < ports.Count; first++)
        {
            var last = first;
            while (last + 1 < ports.Count && last + 1 - first < most && ports[last + 1].Port.Port == ports[last].Port.Port + 1)
                last++;
            runs.Add((ports[first..(last + 1)].Sum(port => port.ClassWatts ?? 0), [.. ports[first..(last + 1)].Select(port => port.Endpoint)]));
        }

        return runs.Count == 0 ? [] : new[] { runs.MaxBy(run => run.Watts).Run, runs.MaxBy(run => run.Run.Count).Run }.Distinct();
    }
}

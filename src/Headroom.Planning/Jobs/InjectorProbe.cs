using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;
using Headroom.Engineering.Power;

namespace Headroom.Planning.Jobs;

/// <summary>Asks the study which injector serves a kind, the cheapest first.</summary>
internal sealed class InjectorProbe(Job job, Catalogue catalogue, IReadOnlyList<EndpointKind> kinds, UnitPrices prices)
{
    /// <summary>The cheapest injector for each kind; null where none serves it, or it takes no power.</summary>
    public Dictionary<int, InjectorModel?> Cheapest(PlanRequest request)
    {
        var models = catalogue.Injectors.Values
            .Where(model => model.Ports == 1 && model.Supply.Input != "dc" && prices.Of(model) is not null)
            .OrderBy(model => prices.Of(model)!.Total).ThenBy(model => model.Id, StringComparer.Ordinal).ToList();
        var served = new Dictionary<int, InjectorModel?>();
        for (var kind = 0; kind < kinds.Count; kind++)
            served[kind] = null;
        // What grows is planned on ports.
        var open = Enumerable.Range(0, kinds.Count).Where(kind => kinds[kind].TakesPower && !kinds[kind].IsGrowth).ToList();
        foreach (var model in models)
        {
            // What asks by a class is not put on a voltage that asks nobody, though it may stand it.
            foreach (var kind in Serves(model, [.. open.Where(kind => model.Passive is null || kinds[kind].Model.Power!.Class is null)], request))
            {
                served[kind] = model;
                open.Remove(kind);
            }
        }

        return served;
    }

    /// <summary>What one of each kind takes of a midspan in each state, in the parts of loads; only kinds that it serves. The study counts no start of it.</summary>
    public Dictionary<int, long[]> Loads(InjectorModel model, PlanRequest request)
    {
        var may = Enumerable.Range(0, kinds.Count).Where(kind => kinds[kind].TakesPower && (model.Passive is null || kinds[kind].Model.Power!.Class is null)).ToList();
        return Ask(model, may, request);
    }

    private List<int> Serves(InjectorModel model, List<int> open, PlanRequest request) => [.. Ask(model, open, request).Keys];

    private static long Load(PoweredPort port, PowerState state) => state == PowerState.Start ? 0
        : (long)Math.Round((port.In(state).PortWatts ?? port.GrantWatts ?? PoeTypes.Of(port.Feed.Type ?? PoeType.Type1).MostSourceWatts) * PortAnswer.PerWatt);

    private Dictionary<int, long[]> Ask(InjectorModel model, List<int> open, PlanRequest request)
    {
        if (open.Count == 0)
            return [];
        var injectors = open.Select(kind => new PlacedInjector($"i{kind}", model.Id, new Standing(null, null, null), null, [], Place.None)).ToList();
        var patch = open.Select(kind => new Patch($"e{kind}", new PortRef($"i{kind}", null), Place.None)).ToList();
        var design = new Design("probe", null, [], injectors, [], [], patch, [], Place.None);
        var endpoints = open.Select(kind => kinds[kind].Worst with { Id = $"e{kind}" }).ToList();
        var asks = job with { Survey = job.Survey with { Endpoints = endpoints, Drops = EndpointKinds.Drops(job, kinds), Listeners = [] }, Designs = [design], Chosen = null };
        var only = new StudyRequest("probe", request.On, [], [PowerLedger.Discipline]) { FirmReadings = request.FirmReadings };
        var results = Study.Results(asks, catalogue, only);
        var ledger = Study.LedgerOf(results, only);
        var broken = ledger.Entries.Where(entry => entry.Verdict is Verdict.Short or Verdict.Tight).Select(entry => entry.Subject).ToHashSet();
        var there = ledger.Entries.Select(entry => entry.Subject).ToHashSet();
        var ports = results.Power.Ports.ToDictionary(port => port.Id);
        return open.Where(kind => !broken.Contains($"e{kind}") && !broken.Contains($"i{kind}") && there.Contains($"e{kind}"))
            .ToDictionary(kind => kind, kind => ports.TryGetValue($"e{kind}", out var port) ? PortProbe.States.Select(state => Load(port, state)).ToArray() : new long[PortProbe.States.Length]);
    }
}

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

    private List<int> Serves(InjectorModel model, List<int> open, PlanRequest request)
    {
        if (open.Count == 0)
            return [];
        var injectors = open.Select(kind => new PlacedInjector($"i{kind}", model.Id, new Standing(null, null, null), null, [], Place.None)).ToList();
        var patch = open.Select(kind => new Patch($"e{kind}", new PortRef($"i{kind}", null), Place.None)).ToList();
        var design = new Design("probe", null, [], injectors, [], [], patch, [], Place.None);
        var endpoints = open.Select(kind => kinds[kind].Worst with { Id = $"e{kind}" }).ToList();
        var asks = job with { Survey = job.Survey with { Endpoints = endpoints, Drops = EndpointKinds.Drops(job, kinds), Listeners = [] }, Designs = [design], Chosen = null };
        var ledger = Study.Run(asks, catalogue, new StudyRequest("probe", request.On, [], [PowerLedger.Discipline]) { FirmReadings = request.FirmReadings });
        var broken = ledger.Entries.Where(entry => entry.Verdict is Verdict.Short or Verdict.Tight).Select(entry => entry.Subject).ToHashSet();
        var there = ledger.Entries.Select(entry => entry.Subject).ToHashSet();
        return [.. open.Where(kind => !broken.Contains($"e{kind}") && !broken.Contains($"i{kind}") && there.Contains($"e{kind}"))];
    }
}
